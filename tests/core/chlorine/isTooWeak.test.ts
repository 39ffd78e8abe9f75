import { expect, test } from "vitest";
import type { Strength } from "../../../src/core/chlorine/availableChlorine.ts";
import { containerLitres } from "../../../src/core/chlorine/containerLitres.ts";
import { isTooWeak } from "../../../src/core/chlorine/isTooWeak.ts";
import { figure, missing } from "../answerOf.ts";

test.each<[Strength, number, boolean]>([
	[{ form: "liquid", gramsPerLitre: 5 }, 0.5, false],
	[{ form: "liquid", gramsPerLitre: 4.99 }, 0.5, true],
	[{ form: "powder", gramsPerGram: 0.005 }, 0.5, false],
	[{ form: "powder", gramsPerGram: 0.0049 }, 0.5, true],
	[{ form: "tablet", gramsPerTablet: 0.1 }, 0.5, false],
	[{ form: "tablet", gramsPerTablet: 0 }, 0.5, false],
])("%j is too weak for %d %%: %s", (strength, target, weak) => {
	expect(isTooWeak({ ...figure(0), outcome: { ok: true, value: strength } }, target)).toBe(weak);
});

test("a product of no known strength is not said to be too weak", () => {
	expect(isTooWeak(missing("a"), 0.5)).toBe(false);
});

test.each([
	["none of its own", undefined, [1, 2, 3, 5, 10, 15, 20]],
	["one between", 7.5, [1, 2, 3, 5, 7.5, 10, 15, 20]],
	["one found on wards", 10, [1, 2, 3, 5, 10, 15, 20]],
	["the largest", 40, [1, 2, 3, 5, 10, 15, 20, 40]],
	["the smallest", 0.5, [0.5, 1, 2, 3, 5, 10, 15, 20]],
])("sizes that amounts are given for, with a preparation of the unit: %s", (_what, own, sizes) => {
	expect(containerLitres(own)).toEqual(sizes);
});
