import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { setAside } from "../../src/core/counts/counts.ts";
import { negativeBinomial } from "../../src/core/counts/negativeBinomial.ts";
import { spanShape } from "../../src/core/counts/spanShape.ts";
import { dayAhead, forecast } from "../../src/core/forecast/forecast.ts";
import { factorsOf } from "../../src/core/forecast/weekdayFactors.ts";
import { plan } from "../../src/core/plan/plan.ts";
import { addDays } from "../../src/core/values/date.ts";
import { answerOf } from "../core/answerOf.ts";
import { recordsOf } from "../core/forecast/register.ts";
import { numberIn, totalOf } from "../core/planCells.ts";
import { unitWith } from "../core/smallUnit.ts";
import { birthsDraw } from "../reference/draws.ts";
import { randomNumbers } from "../reference/randomNumbers.ts";
import { always } from "./workbooks.ts";

const START = "2027-03-01";
const register = fc.array(fc.integer({ min: 0, max: 14 }), { minLength: 1, maxLength: 80 });

/** A plan from a register, with births of one's own on its second day or not. */
function made(counts: readonly number[], kitsPer100: number, own: string) {
	return plan(
		unitWith(
			{ kits_used_per_100_births: kitsPer100, kit_share_from_register: "no" },
			{
				"records.csv": recordsOf(addDays(START, -counts.length), counts),
				"births.csv": `date,births,note\n${own}`,
			},
		),
	);
}

describe("whatever the register", () => {
	test("kits to reprocess are never set aside under kits used, over a day and a week", () => {
		fc.assert(
			fc.property(
				register,
				fc.constantFrom(10, 50, 100),
				fc.constantFrom("", "2027-03-02,9,"),
				(counts, kitsPer100, own) => {
					const found = made(counts, kitsPer100, own);
					const aside = (measure: "births" | "kits_used" | "kits_to_reprocess") =>
						numberIn(totalOf(found, measure), "set_aside");
					expect(aside("kits_to_reprocess")).toBeGreaterThanOrEqual(aside("kits_used") as number);
					expect(aside("births")).toBeGreaterThanOrEqual(aside("kits_used") as number);
				},
			),
			always(20),
		);
	}, 60_000);

	test("what is set aside is at least what is expected, at nine of ten", () => {
		fc.assert(
			fc.property(register, (counts) => {
				const found = made(counts, 100, "");
				for (const measure of [
					"births",
					"kits_to_reprocess",
					"boiled_buckets",
					"gauze_pieces",
				] as const) {
					const total = totalOf(found, measure);
					expect(numberIn(total, "set_aside")).toBeGreaterThanOrEqual(
						Math.floor(numberIn(total, "expected") as number),
					);
				}
			}),
			always(20),
		);
	}, 60_000);
});

test("a longer register of a Poisson unit narrows what is set aside, on average over units", () => {
	const random = randomNumbers(77);
	const days = [14, 56, 180];
	const aside = days.map(() => 0);
	const UNITS = 60;
	for (let unit = 0; unit < UNITS; unit++) {
		const counts = Array.from({ length: 180 }, () =>
			birthsDraw(6, Number.POSITIVE_INFINITY, random),
		);
		days.forEach((length, i) => {
			const known = { firstDay: addDays(START, -length), counts: counts.slice(-length) };
			const learned = answerOf(forecast, {
				register: known,
				factors: factorsOf(known),
				birthsPerDay: 6,
				priorDays: 7,
			});
			const week = Array.from({ length: 7 }, (_, day) => dayAhead(learned, addDays(START, day)));
			const mean = week.reduce((sum, day) => sum + day.mean, 0);
			// The level itself is as often above as below: what is set aside beyond it counts.
			const more = setAside(negativeBinomial(spanShape(week), mean), 0.95) - mean;
			aside[i] = (aside[i] as number) + more / UNITS;
		});
	}
	expect(aside[1]).toBeLessThan(aside[0] as number);
	expect(aside[2]).toBeLessThan((aside[1] as number) + 0.5);
});
