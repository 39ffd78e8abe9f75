import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import type { Preparation } from "../../chlorine/measureOut.ts";
import { type ComputedTable, onDemand } from "../../computedTable.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import { say } from "../../say.ts";
import { lotsSheet } from "../../sheets/lots.ts";
import { wallTableSheet } from "../../sheets/wallTable.ts";
import { definition } from "../../sources.ts";
import type { IsoDate } from "../../values/date.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { preparationCells } from "./preparationCells.ts";
import { preparationOn, preparationWith, strongLots } from "./productFigures.ts";

/** Sizes of basins and buckets found on wards. */
const CONTAINER_LITRES = [1, 2, 3, 5, 10, 15, 20];

const exactLitres = calculation<{ preparation: Preparation; targetPct: number }, number>({
	key: "exact_litres",
	label: say`Exact for`,
	unit: "L",
	formula: say`Litres × strength made ÷ strength wanted: where this much product makes just the strength wanted.`,
	source: definition,
	inputs: {
		preparation: { label: say`One preparation`, unit: "" },
		targetPct: { label: say`Strength of the soak`, unit: "%", min: 1e-6 },
	},
	example: {
		// 790 mL of 3.5 % make 0.79 × 7 L of 0.5 %.
		inputs: {
			preparation: {
				litres: 5.5,
				quantity: 790,
				measure: "mL",
				waterLitres: 4.71,
				strengthMadePct: (0.79 * 3.5) / 5.5,
			},
			targetPct: 0.5,
		},
		result: 5.53,
		within: 1e-9,
	},
	compute: ({ preparation, targetPct }) =>
		(preparation.litres * preparation.strengthMadePct) / targetPct,
});

/** Every usable lot with every container size. */
export function wallTableTable(
	unit: UnitFigures,
	firstDay: IsoDate,
): ComputedTable<typeof wallTableSheet> {
	return onDemand(wallTableSheet, () =>
		unit.products.flatMap((product) => {
			const strong = strongLots(unit, product, firstDay);
			const lots = strong.length > 0 ? strong : [preparationOn(unit, product, firstDay)];
			return lots.flatMap(({ lot, strength }) =>
				CONTAINER_LITRES.map((size) => {
					const place = { file: lotsSheet.file, line: lot?.line ?? null, column: "lot" };
					const litres: Figure = nameFigure(say`Make up to`, size);
					const preparation = preparationWith(unit, strength, place, litres);
					return {
						product: product.name,
						lot: lot ? cellFigure(lotsSheet, lot, "lot") : nameFigure(say`Lot`, ""),
						...preparationCells(preparation),
						exact_litres: derive(exactLitres, { preparation, targetPct: unit.startPct }),
					};
				}),
			);
		}),
	);
}
