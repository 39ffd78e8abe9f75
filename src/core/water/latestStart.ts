import type { Batch, Hearth, PlacedBatch } from "./batch.ts";
import type { FixedBatches } from "./fixedBatches.ts";
import { fullWithin, NEAR, type TakenFor, timesFull } from "./timesFull.ts";

/** Stoves and pots, and the loads of pieces on and in them. */
export interface Taken extends Hearth {
	readonly fixed: FixedBatches;
}

/** Batches placed longer ago than this many are days later: water does not keep so long. */
const MOST_NEAR = 400;

/** The latest minute at which a batch can be lit beside what is placed; undefined where there is none. */
export function latestStart(
	batch: Batch,
	placed: readonly PlacedBatch[],
	{ stoves, pots, fixed }: Taken,
): number | undefined {
	const { stoveMinutes, potMinutes, latestEnd, earliestEnd } = batch;
	const latest = latestEnd - stoveMinutes;
	const earliest = earliestEnd - stoveMinutes;
	if (batch.pots > pots || latest < earliest - NEAR) return undefined;
	const near: PlacedBatch[] = [];
	let potsTaken = 0;
	const addNear = (others: readonly PlacedBatch[], from: number) => {
		for (let i = from; i < others.length; i++) {
			const other = others[i] as PlacedBatch;
			if (other.start >= latest + potMinutes - NEAR) continue;
			if (other.start + other.batch.potMinutes <= earliest) continue;
			near.push(other);
			potsTaken += other.batch.pots;
		}
	};
	addNear(fixed.between(earliest, latest + potMinutes), 0);
	addNear(placed, Math.max(0, placed.length - MOST_NEAR));
	const noStove = timesFull(near.map(onStove), stoves - 1);
	const room = pots - batch.pots;
	const noPots = potsTaken > room ? timesFull(near.map(inPots), room) : [];
	let start = latest;
	while (start >= earliest - NEAR) {
		const stovesFullFrom = fullWithin(noStove, start, stoveMinutes);
		const potsFullFrom = fullWithin(noPots, start, potMinutes);
		if (stovesFullFrom !== undefined) start = stovesFullFrom - stoveMinutes;
		else if (potsFullFrom !== undefined) start = potsFullFrom - potMinutes;
		else return start;
	}
	return undefined;
}

function onStove({ batch, start }: PlacedBatch): TakenFor {
	return { from: start, to: start + batch.stoveMinutes, count: 1 };
}

function inPots({ batch, start }: PlacedBatch): TakenFor {
	return { from: start, to: start + batch.potMinutes, count: batch.pots };
}
