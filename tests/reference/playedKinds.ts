import { meanOfBatches, randomNumbers, waitingTime } from "./randomNumbers.ts";

/** A kind of kit that is reprocessed after each use. */
export interface PlayedKind {
	readonly kits: number;
	readonly usesPerDay: number;
	/** Minutes a kit is gone besides once it has been worked on. */
	readonly aloneMinutes: number;
	/** Days a kit may be used after the day it became ready; infinite where it never goes out of date. */
	readonly lifeDays: number;
}

/** Kinds of kit that the same people take as they come, one kit after the other. */
export interface PlayedKinds {
	readonly kinds: readonly PlayedKind[];
	readonly people: number;
	readonly workMinutes: number;
	/** How the uses of a day spread over 24 hours; they add up to 1. */
	readonly shares: readonly number[];
}

const DAY = 1440;
const BATCHES = 100;
const WARM_UP = 60;

/**
 * Needs of each kind that find no kit of it ready, of 1,000.
 *
 * Each kit has its own age, and the oldest ready one is used first. A need that finds none
 * still sends a kit to the queue. What goes out of date at a midnight goes there in any order.
 */
export function playedKinds(
	{ kinds, people, workMinutes, shares }: PlayedKinds,
	days: number,
	seed: number,
) {
	const random = randomNumbers(seed);
	const busiest = Math.max(...shares);
	const usesPerDay = kinds.reduce((sum, kind) => sum + kind.usesPerDay, 0);
	/** Last minute of each ready kit, oldest first. */
	const ready = kinds.map(({ kits, lifeDays }) =>
		Array.from(
			{ length: kits },
			(_, n) => (Number.isFinite(lifeDays) ? (n % lifeDays) + 1 : lifeDays) * DAY,
		),
	);
	const owed = kinds.map(() => 0);
	/** Kinds of the kits that wait, first come first. */
	const queue: number[] = [];
	/** Work takes as long for each, so what was begun first ends first. */
	const atWork: { kind: number; until: number }[] = [];
	const alone: { kind: number; until: number }[] = [];
	let free = people;
	let nextUse = 0;
	let midnight = DAY;
	const advance = () => {
		do nextUse += waitingTime(random, (usesPerDay * busiest) / 60);
		while (random() * busiest >= (shares[Math.floor((nextUse % DAY) / 60)] as number));
	};
	const kindUsed = () => {
		let left = random() * usesPerDay;
		for (let k = 0; k < kinds.length; k++) {
			left -= (kinds[k] as PlayedKind).usesPerDay;
			if (left < 0) return k;
		}
		return kinds.length - 1;
	};
	const takeUp = (now: number) => {
		for (; free > 0 && queue.length > 0; free--)
			atWork.push({ kind: queue.shift() as number, until: now + workMinutes });
	};
	const isBack = (k: number, now: number) => {
		if ((owed[k] as number) > 0) owed[k] = (owed[k] as number) - 1;
		else
			(ready[k] as number[]).push(
				(Math.floor(now / DAY) + (kinds[k] as PlayedKind).lifeDays + 1) * DAY,
			);
	};
	const lapse = (now: number) => {
		const gone: number[] = [];
		for (let k = 0; k < ready.length; k++) {
			const last = ready[k] as number[];
			while (last.length > 0 && (last[0] as number) <= now) {
				last.shift();
				gone.push(k);
			}
		}
		while (gone.length > 0) {
			const [any] = gone.splice(Math.floor(random() * gone.length), 1);
			queue.push(any as number);
		}
	};
	const soonestBack = () => {
		let first = Number.POSITIVE_INFINITY;
		for (let i = 0; i < alone.length; i++)
			first = Math.min(first, (alone[i] as { until: number }).until);
		return first;
	};
	advance();
	const unmetOf: number[][] = kinds.map(() => []);
	for (let batch = -1; batch < BATCHES; batch++) {
		const until = ((batch + 1) * (days / BATCHES) + WARM_UP) * DAY;
		const uses = kinds.map(() => 0);
		const unmet = kinds.map(() => 0);
		for (;;) {
			const worked = atWork[0]?.until ?? Number.POSITIVE_INFINITY;
			const back = soonestBack();
			const now = Math.min(nextUse, midnight, worked, back);
			if (now > until) break;
			if (now === back) {
				const [job] = alone.splice(
					alone.findIndex((one) => one.until === now),
					1,
				);
				isBack((job as { kind: number }).kind, now);
			} else if (now === worked) {
				const { kind } = atWork.shift() as { kind: number };
				const { aloneMinutes } = kinds[kind] as PlayedKind;
				free++;
				if (aloneMinutes > 0) alone.push({ kind, until: now + aloneMinutes });
				else isBack(kind, now);
			} else if (now === midnight) {
				lapse(now);
				midnight += DAY;
			} else {
				const k = kindUsed();
				uses[k] = (uses[k] as number) + 1;
				if ((ready[k] as number[]).shift() === undefined) {
					unmet[k] = (unmet[k] as number) + 1;
					owed[k] = (owed[k] as number) + 1;
				}
				queue.push(k);
				advance();
			}
			takeUp(now);
		}
		if (batch < 0) continue;
		kinds.forEach((_, k) => {
			(unmetOf[k] as number[]).push((1000 * (unmet[k] as number)) / Math.max(1, uses[k] as number));
		});
	}
	return unmetOf.map(meanOfBatches);
}
