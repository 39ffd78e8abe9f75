import { expect, test } from "vitest";
import { dosingFor } from "../../../../src/core/plan/chlorine/dosing.ts";
import {
	type ProductFigures,
	productFigures,
} from "../../../../src/core/plan/chlorine/productFigures.ts";
import { freshStaysStrong } from "../../../../src/core/plan/chlorine/strengthAfter.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { valueIn } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

/** Days of the law of Adam and Gordon at 25 °C, written out again: from 35 to 20 g/L, so many times as fast. */
function daysOfLaw(factor: number): number {
	const rate =
		10 ** (0.149 * ((2 * 35) / 70.906 + 0.05)) *
		(2.083e10 * 298.15 * Math.exp(-1.018e5 / (8.314 * 298.15)) * Math.exp(-56.5 / 8.314));
	return (70.906 / 20 - 70.906 / 35) / (factor * rate) / 86_400;
}

test.each<[string, string, number | null]>([
	["a liquid that fades 20 times as fast as the law", "liquid,3.5,pct_w_v,,20,", daysOfLaw(20)],
	["a liquid that does not fade", "liquid,3.5,pct_w_v,,0,", null],
	["a liquid weaker than wanted on its first day", "liquid,1.9,pct_w_v,,1.3,", 0],
	["a powder that loses 2 points a year, for ten years", "powder,70,pct_w_w,,,2", null],
	["tablets", "tablet,1.5,g_per_tablet,,,", null],
])("%s", (_what, product, days) => {
	const read = readWorkbook(
		unitWith(
			{ target_strength_pct: 2, store_c: 25 },
			{
				"chlorine.csv": `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
					A,${product},yes`,
			},
		),
	);
	const [figures] = productFigures(read) as [ProductFigures];
	const found = valueIn(freshStaysStrong(dosingFor(read), figures));
	expect(found).toBe(days === null ? null : Math.floor(days));
});
