import { expect, test } from "vitest";
import { placeOf, statesOf, waysToEnd } from "../../../src/core/kits/waysToEnd.ts";

// (kits + days − 1) over kits ways (stars and bars).
test.each([
	[0, 5, 1],
	[1, 7, 7],
	[4, 1, 1],
	[5, 8, 792],
	[6, 8, 1716],
	[14, 4, 680],
])("%d kits end on %d days in %d ways, each with its place", (kits, ends, ways) => {
	const states = statesOf(kits, ends);
	expect(states).toHaveLength(ways);
	expect(waysToEnd(kits, ends)).toBe(ways);
	expect(states.map((counts) => placeOf(counts, kits))).toEqual(states.map((_, place) => place));
	for (const counts of states) expect(counts.reduce((sum, n) => sum + n, 0)).toBe(kits);
	expect(new Set(states.map((counts) => counts.join())).size).toBe(ways);
});
