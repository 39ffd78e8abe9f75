import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { containerLitres } from "../../chlorine/containerLitres.ts";
import { lastUsableDay } from "../../chlorine/lastUsableDay.ts";
import type { Preparation } from "../../chlorine/measureOut.ts";
import { type ComputedTable, onDemand } from "../../computedTable.ts";
import { valueIn } from "../../outcome.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { say } from "../../say.ts";
import { type LotsRow, lotsSheet } from "../../sheets/lots.ts";
import { wallTableSheet } from "../../sheets/wallTable.ts";
import { definition } from "../../source.ts";
import type { IsoDate } from "../../values/date.ts";
import { endOfMonth } from "../../values/isoMonth.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { litresOfPreparation } from "./litresOfPreparation.ts";
import { preparationOn, preparationWith, strongLots } from "./lotPreparation.ts";
import { preparationCells } from "./preparationCells.ts";
import type { ProductFigures } from "./productFigures.ts";
import { strengthOfLot } from "./strengthOfLot.ts";

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

/** Every usable lot with every container size, dosed for the weakest day of the month on which the lot is used. */
export function wallTableTable(
	unit: UnitFigures,
	firstDay: IsoDate,
): ComputedTable<typeof wallTableSheet> {
	return onDemand(wallTableSheet, () => {
		const sizes = containerLitres(valueIn(litresOfPreparation(unit.read)));
		const monthEnd = endOfMonth(firstDay);
		return unit.products.flatMap((product) => {
			const strong = strongLots(unit, product, firstDay);
			const lots = strong.length > 0 ? strong : [preparationOn(unit, product, firstDay)];
			return lots.flatMap(({ lot, strength }) => {
				const until = lot ? lastDayOf(unit, product, lot, firstDay, monthEnd) : monthEnd;
				const weakest = lot ? strengthOfLot(unit.read, product, lot, until) : strength;
				return sizes.map((size) => {
					const place = { file: lotsSheet.file, line: lot?.line ?? null, column: "lot" };
					const litres: Figure = nameFigure(say`Make up to`, size);
					const preparation = preparationWith(unit, weakest, place, litres);
					return {
						product: product.name,
						lot: lot ? cellFigure(lotsSheet, lot, "lot") : nameFigure(say`Lot`, ""),
						...preparationCells(preparation),
						exact_litres: derive(exactLitres, { preparation, targetPct: unit.startPct }),
						until: nameFigure(say`Good until`, until),
					};
				});
			});
		});
	});
}

/** A lot only ever fades, so its last day of the month is its weakest: the month's end, or when it ends before. */
function lastDayOf(
	unit: UnitFigures,
	product: ProductFigures,
	lot: GoodRow<LotsRow>,
	firstDay: IsoDate,
	monthEnd: IsoDate,
): IsoDate {
	const strengthOn = (day: IsoDate) => strengthOfLot(unit.read, product, lot, day);
	const startPct = valueIn(unit.startPct) ?? 0;
	const last = lastUsableDay(strengthOn, startPct, firstDay, lot.value.expires_on);
	return last && last < monthEnd ? last : monthEnd;
}
