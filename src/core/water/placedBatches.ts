import type { Batch, Hearth, PlacedBatch } from "./batch.ts";
import { FixedBatches } from "./fixedBatches.ts";
import { latestStart, type Taken } from "./latestStart.ts";

/** So many batches are tried in every order where one finds no place: 720 orders. */
const TRIED_TOGETHER = 6;
/** So often at most: a plan that needs it more often is overloaded. */
const MOST_REPAIRS = 30;

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
 * place, it and those placed before it are tried in every order, until a need has none in any.
 * Loads of pieces have their hour and cannot give way: they come first of all, as the clock
 * brings them.
 *
 * @param allOrNone whether it is enough to know that some need finds no place
 */
export function placedBatches(
	batches: readonly Batch[],
	hearth: Hearth,
	allOrNone = false,
): Placing {
	const without = new Set<number>();
	const fixed = new FixedBatches();
	for (const batch of batches
		.filter(({ isForPieces }) => isForPieces)
		.sort((a, b) => a.latestEnd - b.latestEnd)) {
		const start = latestStart(batch, [], { ...hearth, fixed });
		if (start === undefined) without.add(batch.need);
		else fixed.add({ batch, start });
	}
	if (allOrNone && without.size > 0) return { placed: fixed.byStart, without: [...without] };
	const rest = placedAround(
		fixed,
		batches.filter(({ isForPieces }) => !isForPieces),
		hearth,
		allOrNone,
	);
	return {
		placed: [...fixed.byStart, ...rest.placed],
		without: [...without, ...rest.without].sort((a, b) => a - b),
	};
}

function placedAround(
	fixed: FixedBatches,
	batches: readonly Batch[],
	of: Hearth,
	allOrNone: boolean,
): Placing {
	const hearth = { ...of, fixed };
	const latestFirst = [...batches].sort((a, b) => b.latestEnd - a.latestEnd);
	let placed: PlacedBatch[] = [];
	/** Needs of which some water has a place. */
	const begun = new Set<number>();
	const without = new Set<number>();
	let repairs = 0;
	for (const batch of latestFirst) {
		if (without.has(batch.need)) continue;
		const start = latestStart(batch, placed, hearth);
		if (start !== undefined) placed.push({ batch, start });
		else {
			const repaired =
				without.size === 0 && repairs++ < MOST_REPAIRS ? repair(batch, placed, hearth) : undefined;
			if (!repaired) {
				without.add(batch.need);
				if (allOrNone) break;
				// Part of a round's water is no use, and its pots are free for others.
				if (begun.has(batch.need))
					placed = placed.filter((other) => other.batch.need !== batch.need);
				continue;
			}
			placed = repaired;
		}
		begun.add(batch.need);
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
	const next: PlacedBatch[] = [];
	for (const [i, batch] of batches.entries()) {
		if (batches.slice(0, i).some((other) => areAlike(other, batch))) continue;
		const start = latestStart(batch, placed, hearth);
		// What finds no place now finds none beside more either.
		if (start === undefined) return undefined;
		next.push({ batch, start });
	}
	for (const each of next) {
		const others = batches.filter((batch) => batch !== each.batch);
		const found = inAnyOrder(others, [...placed, each], hearth);
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
