import { poisson } from "../counts/poisson.ts";
import type { DayClock } from "../rounds/dayClock.ts";
import type { Hands } from "../rounds/handsOneByOne.ts";
import { MINUTES_PER_DAY } from "../values/clock.ts";
import { areAlike } from "./areAlike.ts";
import { kitsInQueue, oneServiceLater } from "./kitsInQueue.ts";

/** Kits out of reach at one moment of the day. */
export interface AwayAt {
	/** Minutes after midnight. */
	readonly minute: number;
	/** How likely each number of kits is to wait or be worked on. */
	readonly queue: Float64Array;
	/** Mean number of kits left alone besides, a Poisson count. */
	readonly alone: number;
}

/** Kits are followed in steps of so many minutes at most, as many to a kit's work as that takes. */
const STEP_MINUTES = 20;
/** Where the steps are shorter, moments about so far apart are looked at: hours of uses change no faster. */
export const LOOKED_AT_MINUTES = 5;
const MOST_DAYS = 8;
/** Work that is shorter counts as so much: a kit that is worked on for moments hardly ever waits. */
export const SHORTEST_MINUTES = 1;

/**
 * Kits out of reach through a day like all others, where `people` take one kit after the other.
 *
 * Those that wait or are worked on follow from those one service time before
 * (`oneServiceLater`), for days enough to forget how it began: as it would be if they came evenly, or with none
 * where less time is enough for sure. Those left alone are counted as if they were so before the work, so that
 * they are Poisson and apart from the others.
 *
 * @param uses a clock on which every day is like this one; fewer come than can be worked on
 */
export function awayThroughDay(uses: DayClock, hands: Hands): AwayAt[] {
	const { people, aloneMinutes } = hands;
	const { workMinutes, each, step } = stepsOfWork(hands);
	const came = (minute: number, minutes: number) =>
		uses.between(minute - aloneMinutes - minutes, minute - aloneMinutes);
	const perService = (uses.between(0, MINUTES_PER_DAY) * workMinutes) / MINUTES_PER_DAY;
	const moments: AwayAt[] = [];
	const everyStep = momentsApart(step);
	const first = daysToForget({ people, workMinutes, aloneMinutes }, perService) * MINUTES_PER_DAY;
	const most = first / workMinutes;
	const forgotten = servicesToForget(people, most, (services) =>
		came(first, services * workMinutes),
	);
	// Where how it was is forgotten it is begun with none: what an even day leaves could outlast so short a time.
	const begins = uses.isEven || forgotten > most ? kitsInQueue(people, perService) : none;
	/** The last service time, one step after the other. */
	const lately = Array.from({ length: each }, (): Lately => ({ queue: begins, cameMean: 0 }));
	const begin = Math.max(0, Math.floor((first - forgotten * workMinutes) / step));
	for (let i = begin, looked = 0; i * step < first + MINUTES_PER_DAY; i++) {
		const minute = i * step;
		// Where they come evenly, every moment is like every other.
		if (!uses.isEven)
			lately[i % each] = aServiceLater(
				lately[i % each] as Lately,
				people,
				came(minute, workMinutes),
			);
		if (minute < first || looked++ % everyStep > 0) continue;
		const { queue } = lately[i % each] as Lately;
		const until = uses.isEven ? aloneMinutes : minute;
		const alone = uses.between(until - aloneMinutes, until);
		moments.push({ minute: minute - first, queue, alone });
	}
	return moments;
}

const none = Float64Array.of(1);

/** So many steps to a kit's work, each so many minutes. */
export function stepsOfWork(hands: Hands) {
	const workMinutes = Math.max(SHORTEST_MINUTES, hands.workMinutes);
	const each = Math.ceil(workMinutes / STEP_MINUTES);
	return { workMinutes, each, step: workMinutes / each };
}

/** How many steps lie between moments that are looked at. */
export const momentsApart = (step: number) => Math.max(1, Math.floor(LOOKED_AT_MINUTES / step));

/** Kits that wait or are worked on, and the mean number that came while the last were worked on. */
interface Lately {
	readonly queue: Float64Array;
	readonly cameMean: number;
	/** As it was one service time before, when as many came. */
	readonly stays?: boolean;
}

/** Less is rounding: hours in which as many come, or a queue that has not changed. */
const ALIKE = 1e-12;

function aServiceLater(before: Lately, people: number, cameMean: number): Lately {
	const isSame = Math.abs(cameMean - before.cameMean) <= ALIKE;
	if (isSame && before.stays) return before;
	const queue = oneServiceLater(before.queue, people, cameMean);
	return { queue, cameMean, stays: isSame && areAlike(queue, before.queue, ALIKE) };
}

/** A queue forgets the slower the busier the people are; it begins as on an even day. */
export function daysToForget({ people, workMinutes }: Hands, perService: number): number {
	const free = 1 - perService / people;
	const minutes = (3 * workMinutes) / people / free ** 2;
	return Math.min(MOST_DAYS, 1 + Math.ceil(minutes / MINUTES_PER_DAY));
}

/** Chance that a kit still waits for one before that moment, as a logarithm: less cannot be seen in any result. */
const UNSEEN = -40;

/**
 * Service times before a moment from which on its queue no longer hangs on how it was then: however
 * far back one looks beyond them, more were worked on than came (Reich), but for chances that
 * nobody sees (Chernoff).
 *
 * @param most looked back to
 * @param came mean number that came in so many service times before the moment
 */
function servicesToForget(people: number, most: number, came: (services: number) => number) {
	for (let services = Math.floor(most); services > 0; services--) {
		const worked = people * services;
		const mean = came(services);
		const moreCame = mean < worked ? worked - mean - worked * Math.log(worked / mean) : 0;
		if (moreCame > UNSEEN) return services + 1;
	}
	return 1;
}

/** With a Poisson count of the mean given added. */
export function plusPoisson(kits: Float64Array, meanCount: number): Float64Array {
	const { first, chance } = poisson(meanCount);
	const sum = new Float64Array(kits.length + first + chance.length - 1);
	for (let n = 0; n < kits.length; n++) {
		const p = kits[n] as number;
		for (let m = 0; m < chance.length; m++)
			sum[n + first + m] = (sum[n + first + m] as number) + p * (chance[m] as number);
	}
	return sum;
}
