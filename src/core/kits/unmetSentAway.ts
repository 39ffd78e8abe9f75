import { beyondAsFarAs, beyondOne } from "../counts/beyondEach.ts";
import { DayClock, type HourShares } from "../rounds/dayClock.ts";
import { MINUTES_PER_DAY } from "../values/clock.ts";
import { expiriesPerDay } from "./expiriesPerDay.ts";

/** Everything that decides when kits that rounds send away are ready again. */
export interface SentAway {
	readonly kind: "sent_away";
	/** Starts of the rounds of a day, minutes after midnight, earliest first. */
	readonly starts: readonly number[];
	/** From the start of the round that sends a kit away to its being ready. */
	readonly turnaroundMinutes: number;
	readonly usesPerDay: readonly number[];
	readonly hourShares: HourShares;
	/** Days a ready kit may be used; null where it never goes out of date. */
	readonly readyLifeDays: number | null;
}

/** Between two returns, on so many days that are alike. */
interface Stretch {
	/** Mean uses out of reach at its beginning. */
	readonly from: number;
	/** At its end. */
	readonly to: number;
	readonly times: number;
}

/** So many stretches are gone through one by one; of more, those that are alike together: a year of 24 rounds a day has 8,784. */
const MOST_EACH = 1000;
/** Stretches whose means are kept for the next number of kits. */
const MOST_KNOWN = 200;

/**
 * Uses that find no kit ready, of 1,000, where every round sends all kits that wait away
 * and they come back after a fixed time, whatever rounds begin meanwhile.
 *
 * Between two returns the kits out of reach are those used since the start of the round
 * that came back last, a Poisson count: the needs beyond the kits there are follow from
 * its means at both ends (closed form, exact). Kits gone out of date are added as a
 * Poisson count of even mean.
 */
export class UnmetSentAway {
	readonly #plan: SentAway;
	readonly #stretches: readonly Stretch[];
	readonly #uses: number;

	constructor(plan: SentAway) {
		this.#plan = plan;
		const clock = new DayClock(plan.usesPerDay, plan.hourShares);
		const end = plan.usesPerDay.length * MINUTES_PER_DAY;
		const stretches = returns(plan).flatMap(({ start, back, next }) => {
			const [from, to] = [Math.max(0, back), Math.min(end, next)];
			if (from >= to) return [];
			return [{ from: clock.between(start, from), to: clock.between(start, to), times: 1 }];
		});
		this.#stretches = stretches.length > MOST_EACH ? alikeTogether(stretches) : stretches;
		this.#uses = clock.between(0, end);
	}

	/** With no uses at all, none is unmet. */
	per1000(kits: number): number {
		if (this.#uses === 0) return 0;
		const more = awayOutOfDate(this.#plan, kits);
		// Without kits out of date the means are the same for all numbers of kits.
		const areKnown = more === 0 && this.#stretches.length <= MOST_KNOWN;
		const beyond = areKnown
			? (mean: number) => beyondAsFarAs(kits, mean)[kits] as number
			: (mean: number) => beyondOne(kits, mean + more);
		const unmet = this.#stretches.reduce(
			(sum, { from, to, times }) => sum + times * beyond(to) - times * beyond(from),
			0,
		);
		return (1000 * unmet) / this.#uses;
	}
}

/** Those of days that are alike differ by rounding only; in the order in which the first of each comes. */
function alikeTogether(stretches: readonly Stretch[]): Stretch[] {
	const alike = new Map<string, Stretch>();
	for (const stretch of stretches) {
		const name = `${stretch.from.toPrecision(12)} ${stretch.to.toPrecision(12)}`;
		const { times } = alike.get(name) ?? { times: 0 };
		alike.set(name, { ...(alike.get(name) ?? stretch), times: times + 1 });
	}
	return [...alike.values()];
}

/** Mean uses that are out of reach at a minute of the plan. */
export function usesAway(plan: SentAway, minute: number): number {
	const last = returns(plan).findLast(({ back }) => back <= minute);
	const clock = new DayClock(plan.usesPerDay, plan.hourShares);
	return last ? clock.between(last.start, minute) : 0;
}

/** Mean number of kits out of reach because they went out of date: they leave with a round and come back with it. */
export function awayOutOfDate(plan: SentAway, kits: number): number {
	const { usesPerDay, readyLifeDays, turnaroundMinutes } = plan;
	if (readyLifeDays === null) return 0;
	const uses = usesPerDay.reduce((sum, each) => sum + each, 0) / usesPerDay.length;
	const perDay = expiriesPerDay.compute({ kitsInService: kits, usesPerDay: uses, readyLifeDays });
	return (Number(perDay) * turnaroundMinutes) / MINUTES_PER_DAY;
}

/** Every round whose kits come back within the plan or just before it, and when the next one's do. */
function returns({ starts, turnaroundMinutes, usesPerDay }: SentAway) {
	const daysBefore = Math.ceil(turnaroundMinutes / MINUTES_PER_DAY) + 1;
	const all = Array.from({ length: daysBefore + usesPerDay.length + 1 }, (_, day) =>
		starts.map((start) => start + (day - daysBefore) * MINUTES_PER_DAY),
	).flat();
	return all.slice(0, -1).map((start, i) => ({
		start,
		back: start + turnaroundMinutes,
		next: (all[i + 1] as number) + turnaroundMinutes,
	}));
}
