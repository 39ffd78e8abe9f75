import { expect, test } from "vitest";
import type { Counts } from "../../../src/core/counts/counts.ts";
import { moved, spread } from "../../../src/core/counts/spread.ts";

const counts: Counts = { first: 2, chance: Float64Array.of(0.5, 0.25, 0.25) };
const none = Number.POSITIVE_INFINITY;

test.each([
	["whole amounts", 2, none, 4, [0.5, 0, 0.25, 0, 0.25]],
	["between two steps they are shared", 1.5, none, 3, [0.5, 0.125, 0.125, 0.25]],
	["halves", 0.5, none, 1, [0.625, 0.375]],
	["nothing", 0, none, 0, [1]],
	["to the limit", 2, 6, 4, [0.5, 0, 0.25]],
	["just below it", 2, 5.9, 4, [0.5]],
	["one between the limit and the next step is beyond it", 1.25, 3.5, 2, [0.25, 0.25]],
	["all beyond the limit", 2, 3, 3, [0]],
	["backwards", -1, none, -4, [0.25, 0.25, 0.5]],
])("amounts of a count: %s", (_what, each, limit, first, chance) => {
	expect(spread(counts, (count) => count * each, limit)).toEqual({
		first,
		chance: Float64Array.from(chance),
	});
});

test.each([
	["not at all", 0, 2, [0.5, 0.25, 0.25]],
	["by whole steps", 3, 5, [0.5, 0.25, 0.25]],
	["by a quarter", 0.25, 2, [0.375, 0.3125, 0.25, 0.0625]],
	["by one and a half", 1.5, 3, [0.25, 0.375, 0.25, 0.125]],
	["back", -0.5, 1, [0.25, 0.375, 0.25, 0.125]],
])("a count moved %s", (_what, by, first, chance) => {
	expect(moved(counts, by)).toEqual({ first, chance: Float64Array.from(chance) });
});
