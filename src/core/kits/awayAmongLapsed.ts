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
 * apart until they are done, and what is left of it is taken away, as if none were before them.
 * The day begins at the midnight at which they come to the hands; kits used come as long after
 * their use as they are left alone.
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
	const later = (before: Float64Array, at: number) => {
		const minute = at * step;
		let queue = oneServiceLater(before, people, uses.between(minute - workMinutes, minute));
		for (let day = dayOf(at - each) + 1; day <= dayOf(at) && day < days; day++)
			queue = bothAway(queue, lapsed);
		return queue;
	};
	const lately = Array.from({ length: each }, () => kitsInQueue(people, perService));
	let first = 0;
	for (; dayOf(first) < days; first++)
		lately[first % each] = later(lately[first % each] as Float64Array, first);
	/** Of the last service time, for each number of kits out of date that are not done. */
	const apart = lately.map((): Float64Array[] => []);
	const moments: AwayAt[] = [];
	const every = momentsApart(step);
	for (let at = first; dayOf(at) === days; at++) {
		const now = at % each;
		const since = Math.floor((at - first) / each);
		const queue = later(lately[now] as Float64Array, at);
		const kept: Float64Array[] = [];
		/** All those of whom none is left, one of them with the other. */
		let done = queue;
		if (since === 0) {
			done = times(queue, lapsed[0] as number);
			for (let n = 1; n < lapsed.length; n++)
				if (lapsed[n] !== 0) kept[n] = withMore(times(queue, lapsed[n] as number), n);
		}
		apart[now]?.forEach((before, n) => {
			const those = later(before, at);
			if (n > people * since) kept[n] = those;
			else done = plusThose(done, those, 0);
		});
		lately[now] = done;
		apart[now] = kept;
		if ((at - first) % every > 0) continue;
		let used = done;
		kept.forEach((those, n) => {
			used = plusThose(used, those, n - people * since);
		});
		const minute = at * step;
		moments.push({
			minute: (minute + aloneMinutes) % MINUTES_PER_DAY,
			queue: used,
			alone: uses.between(minute, minute + aloneMinutes),
		});
	}
	return moments;
}

const times = (queue: Float64Array, chance: number) => queue.map((p) => p * chance);

function withMore(queue: Float64Array, kits: number): Float64Array {
	const more = new Float64Array(queue.length + kits);
	more.set(queue, kits);
	return more;
}

/** Added to others, without those that are left of it. */
function plusThose(others: Float64Array, those: Float64Array, left: number): Float64Array {
	const sum = new Float64Array(Math.max(others.length, those.length - left));
	sum.set(others);
	those.forEach((p, n) => {
		const used = Math.max(0, n - left);
		sum[used] = (sum[used] as number) + p;
	});
	return sum;
}
