import { atLeastEach } from "../counts/beyondEach.ts";
import { chanceAtLeast } from "../counts/poisson.ts";
import { DayClock, type HourShares } from "../rounds/dayClock.ts";
import type { Hands } from "../rounds/handsOneByOne.ts";
import { MINUTES_PER_DAY } from "../values/clock.ts";
import { awayThroughDay } from "./awayThroughDay.ts";
import { expiriesPerDay } from "./expiriesPerDay.ts";

/** Everything that decides when kits reprocessed one by one are ready again. */
export interface AfterEachUse {
	readonly kind: "after_each_use";
	readonly usesPerDay: readonly number[];
	readonly hourShares: HourShares;
	/** Infinitely many people: hands without limit. */
	readonly hands: Hands;
	/** Days a ready kit may be used; null where it never goes out of date. */
	readonly readyLifeDays: number | null;
}

/** Moments of the plan that are alike. */
interface Moment {
	/** Mean uses about then, on all days together. */
	uses: number;
	/** Chance that at least `kits` are out of reach, a Poisson count of mean `more` added. */
	readonly none: (kits: number, more: number) => number;
}

const STEP_MINUTES = 15;
/** Share of their time up to which people can be busy on a day like all others. */
const FULLEST = 0.95;

/**
 * Uses that find no kit ready, of 1,000, where each kit is reprocessed as soon as it has
 * been used: the chance that at least as many as there are kits are out of reach, weighed
 * by the uses of each hour of each day.
 *
 * With hands without limit those used in the last minutes of work are out of reach, a
 * Poisson count with the mean uses of just those minutes. With few people kits wait for
 * each other (`awayThroughDay`), each day taken as one of many like it. Kits gone out of
 * date, renewed at once, are added as a Poisson count.
 */
export class UnmetAfterEachUse {
	readonly #plan: AfterEachUse;
	readonly #moments: readonly Moment[];
	readonly #uses: number;

	constructor(plan: AfterEachUse) {
		this.#plan = plan;
		this.#moments = Number.isFinite(plan.hands.people) ? queueing(plan) : unlimited(plan);
		this.#uses = this.#moments.reduce((sum, { uses }) => sum + uses, 0);
	}

	/** With no uses at all, none is unmet. */
	per1000(kits: number): number {
		if (this.#uses === 0) return 0;
		const more = outOfDate(this.#plan, kits);
		const unmet = this.#moments.reduce((sum, { uses, none }) => sum + uses * none(kits, more), 0);
		return (1000 * unmet) / this.#uses;
	}
}

/** Mean number of kits out of reach because they went out of date. */
export function outOfDate(plan: AfterEachUse, kits: number): number {
	const { usesPerDay, readyLifeDays, hands } = plan;
	if (readyLifeDays === null) return 0;
	const uses = usesPerDay.reduce((sum, each) => sum + each, 0) / usesPerDay.length;
	const inputs = { kitsInService: kits, usesPerDay: uses, readyLifeDays };
	const perDay = Number(expiriesPerDay.compute(inputs));
	return (perDay * (hands.workMinutes + hands.aloneMinutes)) / MINUTES_PER_DAY;
}

function unlimited({ usesPerDay, hourShares, hands }: AfterEachUse): Moment[] {
	const work = hands.workMinutes + hands.aloneMinutes;
	const moments = new Map<string, Moment>();
	for (const [days, times] of alikeStretches(usesPerDay, Math.ceil(work / MINUTES_PER_DAY))) {
		const uses = new DayClock(days, hourShares);
		const midnight = (days.length - 1) * MINUTES_PER_DAY;
		for (let minute = midnight; minute < midnight + MINUTES_PER_DAY; minute += STEP_MINUTES) {
			const middle = minute + STEP_MINUTES / 2;
			const mean = uses.between(middle - work, middle);
			const now = times * uses.between(minute, minute + STEP_MINUTES);
			// Moments of days that are alike differ by rounding only.
			const name = mean.toPrecision(12);
			const alike = moments.get(name);
			if (alike) alike.uses += now;
			else moments.set(name, { uses: now, none: (kits, more) => chanceAtLeast(kits, mean + more) });
		}
	}
	return [...moments.values()];
}

/** Each day with as many before it as work goes back, and how often just these follow each other. */
function alikeStretches(usesPerDay: readonly number[], before: number): [number[], number][] {
	const stretches = new Map<string, [number[], number]>();
	usesPerDay.forEach((_, day) => {
		const days = Array.from(
			{ length: before + 1 },
			(_day, i) => usesPerDay[Math.max(0, day - before + i)] as number,
		);
		const [, times] = stretches.get(days.join()) ?? [days, 0];
		stretches.set(days.join(), [days, times + 1]);
	});
	return [...stretches.values()];
}

/** A day with more uses than the hands can do is taken as the days are on average. */
function queueing({ usesPerDay, hourShares, hands }: AfterEachUse): Moment[] {
	const mean = usesPerDay.reduce((sum, uses) => sum + uses, 0) / usesPerDay.length;
	const most = (FULLEST * hands.people * MINUTES_PER_DAY) / hands.workMinutes;
	return alikeStretches(usesPerDay, 0).flatMap(([[perDay = 0], times]) => {
		if (perDay === 0) return [];
		const uses = new DayClock([perDay > most ? mean : perDay], hourShares);
		const moments = awayThroughDay(uses, hands);
		const apart = MINUTES_PER_DAY / moments.length / 2;
		const weight = (times * perDay) / uses.between(0, MINUTES_PER_DAY);
		return moments.map(({ minute, away }) => ({
			uses: weight * uses.between(minute - apart, minute + apart),
			none: chanceOfNone(away),
		}));
	});
}

function chanceOfNone(away: Float64Array): Moment["none"] {
	const atLeast = new Float64Array(away.length + 1);
	for (let n = away.length - 1; n >= 0; n--)
		atLeast[n] = (atLeast[n + 1] as number) + (away[n] as number);
	return (kits, more) => {
		let chance = atLeast[kits] ?? 0;
		if (more === 0) return chance;
		const late = atLeastEach(kits, more);
		for (let n = 0; n < Math.min(kits, away.length); n++)
			chance += (away[n] as number) * (late[kits - n] as number);
		return chance;
	};
}
