import type { Batch, Hearth } from "./batch.ts";

/** A batch with the minute at which its stove is lit. */
export interface PlacedBatch {
	readonly batch: Batch;
	readonly start: number;
}

/** Shorter overlaps than this, in minutes, are rounding. */
const NEAR = 1e-6;
/** So many batches are tried in every order where one finds no place: 720 orders. */
const TRIED_TOGETHER = 6;
/** So often at most: a plan that needs it more often is overloaded. */
const MOST_REPAIRS = 30;
/** Batches placed longer ago than this many are days later: water does not keep so long. */
const MOST_NEAR = 400;

export interface Placing {
	readonly placed: readonly PlacedBatch[];
	/** Needs for whose water there is no place. */
	readonly without: readonly number[];
}

/**
 * Places batches on stoves and in pots, each as late as it can be: the latest first.
 *
 * Seen backwards in time it is a schedule of jobs, each as early as what is placed before
 * it allows; some order of the jobs gives every schedule that cannot be moved together, so
 * where all orders are tried, whatever can be done at all is found. Where a batch finds no
 * place, it and those placed before it are tried in every order. Loads of pieces have their
 * hour and cannot give way: they come first of all, as the clock brings them.
 *
 * @param allOrNone whether it is enough to know that some need finds no place
 */
export function placedBatches(
	batches: readonly Batch[],
	hearth: Hearth,
	allOrNone = false,
): Placing {
	const without = new Set<number>();
	const fixed: PlacedBatch[] = [];
	for (const batch of batches
		.filter(({ isForPieces }) => isForPieces)
		.sort((a, b) => a.latestEnd - b.latestEnd)) {
		const start = latestStart(batch, [], { ...hearth, fixed });
		if (start === undefined) without.add(batch.need);
		else fixed.push({ batch, start });
	}
	if (allOrNone && without.size > 0) return { placed: fixed, without: [...without] };
	const rest = placedAround(
		fixed,
		batches.filter(({ isForPieces }) => !isForPieces),
		hearth,
		allOrNone,
	);
	return {
		placed: [...fixed, ...rest.placed],
		without: [...without, ...rest.without].sort((a, b) => a - b),
	};
}

/** Stoves and pots, and the loads of pieces on and in them. */
interface Taken extends Hearth {
	readonly fixed: readonly PlacedBatch[];
}

function placedAround(
	fixed: readonly PlacedBatch[],
	batches: readonly Batch[],
	of: Hearth,
	allOrNone: boolean,
): Placing {
	const hearth = { ...of, fixed };
	const latestFirst = [...batches].sort((a, b) => b.latestEnd - a.latestEnd);
	let placed: PlacedBatch[] = [];
	const without = new Set<number>();
	let repairs = 0;
	for (const batch of latestFirst) {
		if (without.has(batch.need)) continue;
		const start = latestStart(batch, placed, hearth);
		if (start !== undefined) {
			placed.push({ batch, start });
			continue;
		}
		const repaired =
			without.size === 0 && repairs++ < MOST_REPAIRS ? repair(batch, placed, hearth) : undefined;
		if (repaired) placed = repaired;
		else {
			without.add(batch.need);
			if (allOrNone) break;
			// Part of a round's water is no use, and its pots are free for others.
			placed = placed.filter((other) => other.batch.need !== batch.need);
		}
	}
	return { placed, without: [...without] };
}

function repair(
	batch: Batch,
	placed: readonly PlacedBatch[],
	hearth: Taken,
): PlacedBatch[] | undefined {
	const kept = placed.slice(0, -(TRIED_TOGETHER - 1) || undefined);
	const moved = placed.slice(kept.length).map((each) => each.batch);
	return inAnyOrder([batch, ...moved], kept, hearth);
}

/** All of these placed beside what is placed, in the first order that does; undefined where none does. */
function inAnyOrder(
	batches: readonly Batch[],
	placed: PlacedBatch[],
	hearth: Taken,
): PlacedBatch[] | undefined {
	if (batches.length === 0) return placed;
	for (const [i, batch] of batches.entries()) {
		if (batches.slice(0, i).some((other) => areAlike(other, batch))) continue;
		const start = latestStart(batch, placed, hearth);
		if (start === undefined) continue;
		const found = inAnyOrder(batches.toSpliced(i, 1), [...placed, { batch, start }], hearth);
		if (found) return found;
	}
	return undefined;
}

/** In whose place the other may stand as well. */
function areAlike(one: Batch, other: Batch): boolean {
	return (
		one.latestEnd === other.latestEnd &&
		one.earliestEnd === other.earliestEnd &&
		one.stoveMinutes === other.stoveMinutes &&
		one.pots === other.pots
	);
}

/** The latest minute at which a batch can be lit beside what is placed; undefined where there is none. */
function latestStart(
	batch: Batch,
	placed: readonly PlacedBatch[],
	{ stoves, pots, fixed }: Taken,
): number | undefined {
	const { stoveMinutes, potMinutes, latestEnd, earliestEnd } = batch;
	const latest = latestEnd - stoveMinutes;
	const earliest = earliestEnd - stoveMinutes;
	if (batch.pots > pots || latest < earliest - NEAR) return undefined;
	const near: PlacedBatch[] = [];
	const addNear = (others: readonly PlacedBatch[], from: number) => {
		for (let i = from; i < others.length; i++) {
			const other = others[i] as PlacedBatch;
			if (other.start >= latest + potMinutes - NEAR) continue;
			if (other.start + other.batch.potMinutes > earliest) near.push(other);
		}
	};
	addNear(fixed, 0);
	addNear(placed, Math.max(0, placed.length - MOST_NEAR));
	const starts = near
		.flatMap(({ start }) => [start - stoveMinutes, start - potMinutes])
		.filter((start) => start >= earliest - NEAR && start < latest)
		.sort((a, b) => b - a);
	return [latest, ...starts].find(
		(start) =>
			most(near, start, stoveMinutes, (b) => [b.stoveMinutes, 1]) + 1 <= stoves &&
			most(near, start, potMinutes, (b) => [b.potMinutes, b.pots]) + batch.pots <= pots,
	);
}

/** The most that is taken at any minute between a start and so many minutes later. */
function most(
	placed: readonly PlacedBatch[],
	start: number,
	minutes: number,
	taken: (batch: Batch) => readonly [minutes: number, count: number],
): number {
	const spans = placed.flatMap((other) => {
		const [lasts, count] = taken(other.batch);
		const touches = other.start < start + minutes - NEAR && other.start + lasts > start + NEAR;
		return touches ? [{ from: other.start, to: other.start + lasts, count }] : [];
	});
	const at = (minute: number) =>
		spans.reduce(
			(sum, { from, to, count }) =>
				from <= minute + NEAR && to > minute + NEAR ? sum + count : sum,
			0,
		);
	return Math.max(0, ...[start, ...spans.map(({ from }) => Math.max(start, from))].map(at));
}
