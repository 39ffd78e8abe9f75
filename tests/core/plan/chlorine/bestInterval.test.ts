import { expect, test } from "vitest";
import type { Strength } from "../../../../src/core/chlorine/availableChlorine.ts";
import { problemsOf } from "../../../../src/core/outcome.ts";
import { bestInterval } from "../../../../src/core/plan/chlorine/bestInterval.ts";
import { outcomeOf } from "../../answerOf.ts";

/** The interval for 25 g of chlorine a day at 0.5 %, in packs that cost nothing known. */
function bestOf(after: (day: number) => Strength, size: number) {
	const strengths = Array.from({ length: 91 }, (_, day) => after(day));
	const inputs = { litresPerDay: 5, targetPct: 0.5, strengths, pack: { size, price: null } };
	const outcome = outcomeOf(bestInterval, inputs);
	return outcome.ok ? outcome.value : outcome.problems.map(({ code }) => code);
}
const liquid = (pct: number): Strength => ({ form: "liquid", gramsPerLitre: 10 * pct });

test("tablets are counted, however little one holds", () => {
	// 25 g ÷ 0.25 g: 100 tablets a day, in packs of a week's: every interval costs the same, and the longest wins.
	expect(bestOf(() => ({ form: "tablet", gramsPerTablet: 0.25 }), 700)).toMatchObject({
		days: 91,
		quantity: 9100,
		packs: 13,
		cost: null,
	});
});

test("an interval at whose end the product is too weak is left out; just strong enough it is not", () => {
	// 5 L a day while it is as strong as wanted, in packs of 70 L.
	expect(bestOf((day) => liquid(day < 28 ? 0.5 : 0.49), 70_000)).toMatchObject({
		days: 28,
		packs: 2,
	});
	expect(bestOf((day) => liquid(day < 6 ? 0.5 : 0.49), 70_000)).toEqual(["too-weak"]);
});

test("where no interval will do, the refusal names the strength at the end of the shortest", () => {
	const strengths = Array.from({ length: 91 }, (_, day) => liquid(0.46 - 0.01 * day));
	const pack = { size: 70_000, price: null };
	const outcome = outcomeOf(bestInterval, { litresPerDay: 5, targetPct: 0.5, strengths, pack });
	// On the last of 7 days it is 6 days old.
	expect(problemsOf(outcome)).toMatchObject([{ code: "too-weak", received: "0.4 %" }]);
});
