import fc from "fast-check";
import { expect, test } from "vitest";
import type { Batch, PlacedBatch } from "../../../src/core/water/batch.ts";
import { FixedBatches } from "../../../src/core/water/fixedBatches.ts";
import { always } from "../../properties/workbooks.ts";

const minute = fc.integer({ min: 0, max: 60 });
const placed = fc.array(
	fc
		.tuple(minute, fc.integer({ min: 1, max: 20 }))
		.map(([start, potMinutes]): PlacedBatch => ({ start, batch: { potMinutes } as Batch })),
	{ maxLength: 12 },
);

test("earliest first; of several at once the first that was added", () => {
	fc.assert(
		fc.property(placed, (all) => {
			const sorted = [...all].sort((a, b) => a.start - b.start);
			expect(new FixedBatches(all).byStart).toEqual(sorted);
		}),
		always(200),
	);
});

test("whatever is on the fire between two minutes is found, and nothing from after them", () => {
	let fewer = 0;
	fc.assert(
		fc.property(placed, minute, minute, (all, after, before) => {
			const found = new FixedBatches(all).between(after, before);
			const there = all.filter(
				({ start, batch }) => start < before && start + batch.potMinutes > after,
			);
			expect(found).toEqual(expect.arrayContaining(there));
			expect(found.every(({ start }) => start <= before)).toBe(true);
			if (found.length < all.length) fewer++;
		}),
		always(200),
	);
	expect(fewer).toBeGreaterThan(100);
});
