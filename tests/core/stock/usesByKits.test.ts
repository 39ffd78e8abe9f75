import { expect, test } from "vitest";
import type { Loads } from "../../../src/core/rounds/loads.ts";
import { oneRound } from "../../../src/core/rounds/roundsOfDay.ts";
import { usesByKits } from "../../../src/core/stock/usesByKits.ts";

const days = [oneRound(4), oneRound(2)];
const uses = (perLoad: readonly number[], perKit: number, loads: Loads, perRound = 0) =>
	usesByKits({
		rates: { perDay: 0.5, perRound, perLoad, perKit: [perKit], perDescale: 0 },
		days,
		loads,
		descaleEvery: 0,
	});
const ofOne = { method: "chlorine", kits: 1 } as const;
const ofTwo = { method: "boiling", kits: 2 } as const;

test.each([
	["one method", [2], [ofOne]],
	["two methods", [0.5, 1.5], [ofOne, { ...ofOne, method: "boiling" }]],
	["a method of larger loads, which take nothing", [2, 0], [ofOne, ofTwo]],
] as const)("a load of one kit is the kit: %s", (_what, perLoad, loads) => {
	const found = uses(perLoad, 3, loads);
	const asKits = uses([0], 5, loads);
	for (const confidence of [0.5, 0.9, 0.999])
		expect(found?.enough(confidence)).toBe(asKits?.enough(confidence));
	expect(found?.ways()).toEqual(asKits?.ways());
});

test("larger loads, and what a round takes, go by more than the kits", () => {
	expect(uses([2], 3, [ofTwo])).toBeUndefined();
	expect(uses([0, 2], 3, [ofOne, ofTwo])).toBeUndefined();
	expect(uses([2], 3, [ofOne], 1)).toBeUndefined();
});
