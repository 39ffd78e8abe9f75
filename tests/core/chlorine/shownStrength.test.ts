import { expect, test } from "vitest";
import type { Strength } from "../../../src/core/chlorine/availableChlorine.ts";
import { readingRange } from "../../../src/core/chlorine/readingRange.ts";
import { asLabelled } from "../../../src/core/chlorine/shownStrength.ts";
import { tooWeak } from "../../../src/core/chlorine/tooWeak.ts";
import { expectWithin } from "../../expectWithin.ts";

test.each<[Strength, number]>([
	[{ form: "liquid", gramsPerLitre: 35 }, 3.5],
	[{ form: "powder", gramsPerGram: 0.7 }, 70],
	[{ form: "tablet", gramsPerTablet: 1.67 }, 1.67],
])("%j is shown as %d", (strength, shown) => {
	expect(asLabelled(strength)).toBe(shown);
});

test("a reading agrees with what its method may be off", () => {
	const { low, high } = readingRange(4, "titration");
	expectWithin(low, 4 / 1.124, 1e-12, "");
	expectWithin(high, 4 / 0.876, 1e-12, "");
});

test("a product weaker than what is wanted says how weak", () => {
	expect(tooWeak(0.312345, 0.5)).toMatchObject({
		reasons: [{ code: "too-weak", received: "0.3123 %", allowed: "at least 0.5 %" }],
	});
});
