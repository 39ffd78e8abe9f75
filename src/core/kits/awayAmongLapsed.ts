import type { DayClock } from "../rounds/dayClock.ts";
import type { Hands } from "../rounds/handsOneByOne.ts";
import { MINUTES_PER_DAY } from "../values/clock.ts";
import { type AwayAt, daysToForget, momentsApart, stepsOfWork } from "./awayThroughDay.ts";
import { kitsInQueue, oneServiceLater } from "./kitsInQueue.ts";
import { bothAway } from "./lapsedAtMidnight.ts";

/**
 * Kits used that are out of reach through a day like all others, where kits go out of date at
 * midnight: those used after them wait until they are done.
 *
 * As `awayThroughDay`, but where midnight lies in a service time those out of date came in it
 * too. They are not among the kits used, so the last day is followed for each number of them
 * apart, and what is left of it is taken away again, as if none were before them. The day begins
 * at the midnight at which they come to the hands; kits used come as long after their use as
 * they are left alone.
 *
 * @param lapsed how likely 0, 1, … of all kinds are to go out of date at a midnight
 */
export function awayAmongLapsed(uses: DayClock, hands: Hands, lapsed: Float64Array): AwayAt[] {
	const { people, aloneMinutes } = hands;
	const { workMinutes, each, step } = stepsOfWork(hands);
	const perService = (uses.between(0, MINUTES_PER_DAY) * workMinutes) / MINUTES_PER_DAY;
	const days = daysToForget({ people, workMinutes, aloneMinutes }, perService);
	const dayOf = (at: number) => Math.floor((at * step) / MINUTES_PER_DAY);
	/** With those that went out of date at midnights before the last day. */
	const later = (queues: readonly Float64Array[], at: number) => {
		const minute = at * step;
		const before = queues[at % each] as Float64Array;
		let queue = oneServiceLater(before, people, uses.between(minute - workMinutes, minute));
		for (let day = dayOf(at - each) + 1; day <= dayOf(at) && day < days; day++)
			queue = bothAway(queue, lapsed);
		return queue;
	};
	const before = Array.from({ length: each }, () => kitsInQueue(people, perService));
	let first = 0;
	for (; dayOf(first) < days; first++) before[first % each] = later(before, first);
	const queues: Float64Array[] = [];
	const every = momentsApart(step);
	lapsed.forEach((chance, kits) => {
		if (chance === 0) return;
		const lately = [...before];
		for (let at = first; dayOf(at) === days; at++) {
			const queue = later(lately, at);
			const now = dayOf(at - each) < days ? withMore(queue, kits) : queue;
			lately[at % each] = now;
			const n = (at - first) / every;
			if (!Number.isInteger(n)) continue;
			const left = Math.max(0, kits - people * Math.floor((at - first) / each));
			queues[n] = withThose(queues[n], now, left, chance);
		}
	});
	return queues.map((queue, n) => {
		const minute = (first + n * every) * step;
		return {
			minute: (minute + aloneMinutes) % MINUTES_PER_DAY,
			queue,
			alone: uses.between(minute, minute + aloneMinutes),
		};
	});
}

function withMore(queue: Float64Array, kits: number): Float64Array {
	const more = new Float64Array(queue.length + kits);
	more.set(queue, kits);
	return more;
}

/** Added to what other numbers of kits out of date make likely, without those that are left of them. */
function withThose(
	others: Float64Array | undefined,
	queue: Float64Array,
	left: number,
	chance: number,
): Float64Array {
	const sum = new Float64Array(Math.max(others?.length ?? 0, queue.length - left, 1));
	if (others) sum.set(others);
	queue.forEach((p, n) => {
		const used = Math.max(0, n - left);
		sum[used] = (sum[used] as number) + chance * p;
	});
	return sum;
}
