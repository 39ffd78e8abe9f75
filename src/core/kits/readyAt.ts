import { poisson } from "../counts/poisson.ts";
import { memoizeByObject } from "../memoize.ts";
import { DayClock } from "../rounds/dayClock.ts";
import { areAlwaysFree } from "../rounds/handsOneByOne.ts";
import { minutesOf } from "../rounds/roundLength.ts";
import { MINUTES_PER_DAY } from "../values/clock.ts";
import { awayOnDay } from "./awayOnDay.ts";
import { plusPoisson } from "./awayThroughDay.ts";
import { bothAway, doneBy, stillInWork } from "./lapsedAtMidnight.ts";
import { ofOneKind } from "./ofOneKind.ts";
import { lapsedOfAll, lapsedOfOthers, shareOf } from "./otherKinds.ts";
import { usedAndRenewed } from "./renewedGiven.ts";
import type { Reprocessing } from "./reprocessing.ts";
import { type InRounds, type RoundOfPlan, RoundsGoneThrough } from "./roundsGoneThrough.ts";
import { type RoundBegun, RunOfRounds } from "./runOfRounds.ts";
import { type AfterEachUse, lapsedKits, usesFollowed } from "./unmetAfterEachUse.ts";
import { awayOutOfDate, usesAway } from "./unmetSentAway.ts";
import { usesAtLevels } from "./usesAtLevels.ts";

/** What can be counted on at one moment. */
export interface ReadyAt {
	/** Mean number of kits ready. */
	readonly ready: number;
	/** Needs at that moment that would find none, of 1,000. */
	readonly nonePer1000: number;
}

/**
 * Kits ready at a moment of the plan, as kit cover counts them: the mean of the risk over
 * the day, weighed by the uses, is the unmet share of kit cover.
 *
 * @param minute after the first day's midnight, at which the moment lies; within the plan
 */
export function readyAt(kits: number, reprocessing: Reprocessing, minute: number): ReadyAt {
	if (kits === 0) return { ready: 0, nonePer1000: 1000 };
	let ready = 0;
	let nonePer1000 = 0;
	for (const { at, chance, share } of usesAtLevels(reprocessing)) {
		const there = readyAtLevel(kits, at, minute);
		ready += chance * there.ready;
		nonePer1000 += share * there.nonePer1000;
	}
	return { ready, nonePer1000 };
}

function readyAtLevel(kits: number, reprocessing: Reprocessing, minute: number): ReadyAt {
	const away = awayAt(kits, reprocessing, minute);
	let ready = 0;
	let some = 0;
	for (let n = 0; n < Math.min(kits, away.length); n++) {
		ready += (away[n] as number) * (kits - n);
		some += away[n] as number;
	}
	let none = 0;
	for (let n = away.length - 1; n >= kits; n--) none += away[n] as number;
	// What was cut off is in no hand: all kits are away then.
	return { ready, nonePer1000: 1000 * (away.length > kits ? none : Math.max(0, 1 - some)) };
}

/** How likely each number of kits out of reach is. */
function awayAt(kits: number, reprocessing: Reprocessing, minute: number): Float64Array {
	if (reprocessing.kind === "in_rounds") return awayInRounds(kits, reprocessing, minute);
	return reprocessing.kind === "sent_away"
		? chancesOf(usesAway(reprocessing, minute) + awayOutOfDate(reprocessing, kits))
		: awayOneByOne(kits, reprocessing, minute);
}

/** With a day like the first before the plan, so that a round lies before every moment of it. */
const dayBefore = memoizeByObject(
	(plan: InRounds) =>
		new RoundsGoneThrough({ ...plan, usesPerDay: [plan.usesPerDay[0] ?? 0, ...plan.usesPerDay] }),
);

/** All moments of a plan are asked with one number of kits. */
const goneThrough = memoizeByObject((all: RoundsGoneThrough, kits: number) => {
	const run = new RunOfRounds(kits, all);
	return { run, begun: run.rounds() };
});

function awayInRounds(kits: number, plan: InRounds, minute: number): Float64Array {
	const all = dayBefore(plan);
	const at = minute + MINUTES_PER_DAY;
	const { run, begun } = goneThrough(all, kits);
	const i = all.rounds.findLastIndex(({ start }) => start <= at);
	const round = all.rounds[i] as RoundOfPlan;
	const { begins, most } = begun[i] as RoundBegun;
	const { start, midnight } = round;
	const lapses = midnight !== undefined && at >= midnight ? run.lapses(round) : undefined;
	const used = lapses
		? plusPoisson(
				usedAndRenewed(lapses.used, lapses.given),
				all.uses.between(midnight as number, at),
			)
		: chancesOf(all.uses.between(start, at));
	const away = new Float64Array(kits + used.length);
	begins.forEach((chance, waiting) => {
		const taken = Math.min(waiting, most);
		const out = at < start + minutesOf(plan.length, taken) ? waiting : waiting - taken;
		used.forEach((other, n) => {
			away[out + n] = (away[out + n] as number) + chance * other;
		});
	});
	return away;
}

function chancesOf(meanCount: number): Float64Array {
	const { first, chance } = poisson(meanCount);
	const chances = new Float64Array(first + chance.length);
	chances.set(chance, first);
	return chances;
}

function awayOneByOne(kits: number, plan: AfterEachUse, minute: number): Float64Array {
	const { usesPerDay, hourShares, hands } = plan;
	const lapsed = lapsedKits(plan, kits);
	const ofOthers = lapsedOfOthers(plan);
	const clock = minute % MINUTES_PER_DAY;
	const withLapsed = (away: Float64Array) =>
		lapsed ? bothAway(away, stillInWork(lapsed, doneBy(hands, clock), ofOthers)) : away;
	const uses = new DayClock(usesPerDay, hourShares);
	if (areAlwaysFree(hands)) {
		const work = hands.workMinutes + hands.aloneMinutes;
		return withLapsed(chancesOf(uses.between(minute - work, minute)));
	}
	const day = Math.min(Math.floor(minute / MINUTES_PER_DAY), usesPerDay.length - 1);
	const moments = throughDay(plan)(usesFollowed(plan, usesPerDay[day] as number));
	const nearest = moments.reduce((a, b) =>
		Math.abs(a.minute - clock) <= Math.abs(b.minute - clock) ? a : b,
	);
	return withLapsed(ofOneKind(plusPoisson(nearest.queue, nearest.alone), shareOf(plan)));
}

const throughDay = memoizeByObject((plan: AfterEachUse) => {
	const { hourShares, hands } = plan;
	const lapsed = lapsedOfAll(plan);
	const days = new Map<number, ReturnType<typeof awayOnDay>>();
	return (perDay: number) => {
		const known = days.get(perDay) ?? awayOnDay(perDay, hourShares, hands, lapsed);
		days.set(perDay, known);
		return known;
	};
});
