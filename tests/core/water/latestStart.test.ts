import fc from "fast-check";
import { expect, test } from "vitest";
import type { Batch, Hearth, PlacedBatch } from "../../../src/core/water/batch.ts";
import { FixedBatches } from "../../../src/core/water/fixedBatches.ts";
import { latestStart } from "../../../src/core/water/latestStart.ts";
import { always } from "../../properties/workbooks.ts";

const whole = (min: number, max: number) => fc.integer({ min, max });
const batches: fc.Arbitrary<Batch> = fc
	.record({
		pots: whole(1, 3),
		heat: whole(1, 6),
		cool: whole(0, 8),
		end: whole(20, 40),
		spare: whole(0, 20),
	})
	.map(({ pots, heat, cool, end, spare }) => ({
		need: 0,
		litres: 10,
		startLitres: 10,
		pots,
		heatMinutes: heat,
		kj: 1,
		stoveMinutes: heat,
		potMinutes: heat + cool,
		latestEnd: end,
		earliestEnd: end - spare,
		isForPieces: false,
	}));
const placings = fc.array(
	fc.tuple(batches, whole(0, 45)).map(([batch, start]): PlacedBatch => ({ batch, start })),
	{ maxLength: 6 },
);

/** Minute after minute back from the last, each looked at with everything that is placed. */
function slowly(batch: Batch, placed: readonly PlacedBatch[], stoves: number, pots: number) {
	const taken = (at: number, lasts: (of: Batch) => number, count: (of: Batch) => number) =>
		placed.reduce(
			(sum, { batch: of, start }) =>
				start <= at && at < start + lasts(of) ? sum + count(of) : sum,
			0,
		);
	const free = (start: number) =>
		Array.from({ length: batch.potMinutes }, (_, i) => start + i).every(
			(at, i) =>
				(i >= batch.stoveMinutes ||
					taken(
						at,
						(of) => of.stoveMinutes,
						() => 1,
					) < stoves) &&
				taken(
					at,
					(of) => of.potMinutes,
					(of) => of.pots,
				) +
					batch.pots <=
					pots,
		);
	const first = batch.earliestEnd - batch.stoveMinutes;
	for (let start = batch.latestEnd - batch.stoveMinutes; start >= first; start--)
		if (free(start)) return start;
	return undefined;
}

test("the latest start is that which minute after minute finds, or there is none", () => {
	let [some, none] = [0, 0];
	fc.assert(
		fc.property(batches, placings, whole(1, 3), whole(1, 6), (batch, placed, stoves, pots) => {
			const hearth = { stoves, pots } as Hearth;
			const found = latestStart(batch, placed, { ...hearth, fixed: new FixedBatches() });
			expect(found).toBe(slowly(batch, placed, stoves, pots));
			expect(latestStart(batch, [], { ...hearth, fixed: new FixedBatches(placed) })).toBe(found);
			if (found === undefined) none++;
			else some++;
		}),
		always(500),
	);
	expect(Math.min(some, none)).toBeGreaterThan(50);
});
