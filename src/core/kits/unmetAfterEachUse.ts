import { chanceAtLeast } from "../counts/poisson.ts";
import { Grouped } from "../grouped.ts";
import { DayClock, type HourShares } from "../rounds/dayClock.ts";
import { areAlwaysFree, type Hands } from "../rounds/handsOneByOne.ts";
import { MINUTES_PER_DAY } from "../values/clock.ts";
import { awayOnDay } from "./awayOnDay.ts";
import { type AwayAt, SHORTEST_MINUTES } from "./awayThroughDay.ts";
import { doneBy, lapsedAtMidnight, stillInWork } from "./lapsedAtMidnight.ts";
import { lapsedOfAll, lapsedOfOthers, type OtherKinds, ofAllKinds, shareOf } from "./otherKinds.ts";
import { unmetInQueues } from "./unmetInQueues.ts";

/** Everything that decides when kits reprocessed one by one are ready again. */
export interface AfterEachUse {
	readonly kind: "after_each_use";
	readonly usesPerDay: readonly number[];
	readonly hourShares: HourShares;
	/** Infinitely many people: hands without limit. */
	readonly hands: Hands;
	/** Days a ready kit may be used; null where it never goes out of date. */
	readonly readyLifeDays: number | null;
	/** What the same people take besides; absent where all kits are of one kind. */
	readonly others?: OtherKinds;
}

/** A moment of the day, on days that are alike. */
interface Moment {
	/** Minutes after midnight. */
	readonly minute: number;
	/** Mean uses about then, on all those days together. */
	readonly uses: number;
}

/** One at which kits are out of reach for just so many minutes. */
interface MomentOfWork extends Moment {
	/** What makes the mean number out of reach; moments with the same name have the same. */
	readonly name: string;
	readonly awayMean: number;
}

/** One at which kits wait for each other besides. */
interface MomentOfQueue extends Moment {
	readonly away: AwayAt;
}

const STEP_MINUTES = 15;
/** Share of their time up to which people can be busy on a day like all others. */
const FULLEST = 0.95;
/** From this share on the kits that wait become more and more, however many days there are. */
const TOO_FULL = 0.999;

/**
 * Uses that find no kit ready, of 1,000, where each kit is reprocessed as soon as it has
 * been used: the chance that at least as many as there are kits are out of reach, weighed
 * by the uses of each hour of each day.
 *
 * With hands without limit those used in the last minutes of work are out of reach, a
 * Poisson count with the mean uses of just those minutes. With few people kits wait for
 * each other (`awayThroughDay`), each day taken as one of many like it; where they are of
 * several kinds, each that waits is of the kind asked for by its share (`ofOneKind`), and what
 * goes out of date of any kind is waited for too (`awayAmongLapsed`). Kits that go out of date
 * do so together at a midnight (`lapsedAtMidnight`), and are added as long as they are in work.
 */
export class UnmetAfterEachUse {
	readonly #plan: AfterEachUse;
	/** By how many of the kits that went out of date at midnight are ready again. */
	readonly #parts: readonly Part[];
	readonly #uses: number;

	constructor(plan: AfterEachUse) {
		this.#plan = plan;
		this.#parts = areAlwaysFree(plan.hands)
			? partsOf(plan, unlimited(plan), unmetAtWork)
			: partsOf(plan, queueing(plan), (moments) => unmetInQueues(moments, shareOf(plan)));
		this.#uses = this.#parts.reduce((sum, { uses }) => sum + uses, 0);
	}

	/**
	 * With no uses at all, none is unmet.
	 *
	 * @param renewing false leaves out kits gone out of date: never more is unmet without them
	 */
	per1000(kits: number, renewing = true): number {
		if (this.#uses === 0) return 0;
		const unmet = this.#parts.reduce((sum, part) => sum + part.unmet(kits), 0);
		const more = renewing ? this.#moreByLapsed(kits) : 0;
		return (1000 * (unmet + more)) / this.#uses;
	}

	/** Uses that find none only because kits went out of date. */
	#moreByLapsed(kits: number): number {
		const lapsed = lapsedKits(this.#plan, kits);
		if (!lapsed) return 0;
		let more = 0;
		for (const { done, unmet } of this.#parts) {
			const left = stillInWork(lapsed, done, lapsedOfOthers(this.#plan));
			for (let n = 1; n < left.length; n++) {
				const chance = left[n] as number;
				if (chance > 0) more += chance * (unmet(kits - n) - unmet(kits));
			}
		}
		return more;
	}
}

/** Moments at which as many of the kits that went out of date at midnight are done. */
interface Part {
	readonly done: number;
	readonly uses: number;
	/** Mean uses that find none, where so many kits are not out of date. */
	readonly unmet: (kits: number) => number;
}

function partsOf<M extends Moment>(
	{ readyLifeDays, hands }: AfterEachUse,
	moments: readonly M[],
	unmetAt: (moments: readonly M[]) => Part["unmet"],
): Part[] {
	const byDone = new Grouped<number, M>();
	const doneAt = ({ minute }: M) => (readyLifeDays === null ? 0 : doneBy(hands, minute));
	for (const moment of moments) byDone.add(doneAt(moment), moment);
	return [...new Set(moments.map(doneAt))].map((done) => ({
		done,
		uses: byDone.of(done).reduce((sum, { uses }) => sum + uses, 0),
		unmet: unmetAt(byDone.of(done)),
	}));
}

/** Uses at all of these moments that find none, by the number of kits. */
function unmetAtWork(moments: readonly MomentOfWork[]): Part["unmet"] {
	const alike = alikeMoments(moments);
	const known: number[] = [];
	return (kits) => {
		known[kits] ??= alike.reduce(
			(sum, { uses, awayMean }) => sum + uses * chanceAtLeast(kits, awayMean),
			0,
		);
		return known[kits];
	};
}

/** How many kits go out of date at a midnight; undefined where they never do. */
export function lapsedKits(plan: AfterEachUse, kits: number): Float64Array | undefined {
	const { usesPerDay, readyLifeDays } = plan;
	if (readyLifeDays === null) return undefined;
	const uses = usesPerDay.reduce((sum, each) => sum + each, 0) / usesPerDay.length;
	return lapsedAtMidnight(kits, uses, readyLifeDays);
}

function alikeMoments(moments: readonly MomentOfWork[]) {
	const alike = new Map<string, { uses: number; awayMean: number }>();
	for (const { name, uses, awayMean } of moments) {
		const known = alike.get(name);
		if (known) known.uses += uses;
		else alike.set(name, { uses, awayMean });
	}
	return [...alike.values()];
}

function unlimited({ usesPerDay, hourShares, hands }: AfterEachUse): MomentOfWork[] {
	const work = hands.workMinutes + hands.aloneMinutes;
	const moments: MomentOfWork[] = [];
	for (const [days, times] of alikeStretches(usesPerDay, Math.ceil(work / MINUTES_PER_DAY))) {
		const clock = new DayClock(days, hourShares);
		const midnight = (days.length - 1) * MINUTES_PER_DAY;
		for (let minute = 0; minute < MINUTES_PER_DAY; minute += STEP_MINUTES) {
			const at = midnight + minute;
			const middle = at + STEP_MINUTES / 2;
			const mean = clock.between(middle - work, middle);
			moments.push({
				minute: minute + STEP_MINUTES / 2,
				uses: times * clock.between(at, at + STEP_MINUTES),
				// Moments of days that are alike differ by rounding only.
				name: mean.toPrecision(12),
				awayMean: mean,
			});
		}
	}
	return moments;
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

/**
 * Uses of all kinds on a day as it is followed: with more than the hands can do it is taken as
 * the days are on average, and where many births would make even those too many, as full as can be.
 *
 * @param perDay uses of this kind
 */
export function usesFollowed(plan: AfterEachUse, perDay: number): number {
	const { usesPerDay, hands } = plan;
	const mean = ofAllKinds(
		usesPerDay.reduce((sum, uses) => sum + uses, 0) / usesPerDay.length,
		plan,
	);
	const room = (hands.people * MINUTES_PER_DAY) / Math.max(SHORTEST_MINUTES, hands.workMinutes);
	const all = ofAllKinds(perDay, plan);
	if (all <= FULLEST * room) return all;
	return mean < TOO_FULL * room ? mean : FULLEST * room;
}

function queueing(plan: AfterEachUse): MomentOfQueue[] {
	const { usesPerDay, hourShares, hands } = plan;
	const lapsed = lapsedOfAll(plan);
	return alikeStretches(usesPerDay, 0).flatMap(([[perDay = 0], times]) => {
		if (perDay === 0) return [];
		const followed = usesFollowed(plan, perDay);
		const uses = new DayClock([followed], hourShares);
		const moments = awayOnDay(followed, hourShares, hands, lapsed);
		const apart = MINUTES_PER_DAY / moments.length / 2;
		const weight = (times * perDay) / uses.between(0, MINUTES_PER_DAY);
		return moments.map((away) => ({
			minute: away.minute,
			uses: weight * uses.between(away.minute - apart, away.minute + apart),
			away: uses.isEven && !lapsed ? (moments[0] as AwayAt) : away,
		}));
	});
}
