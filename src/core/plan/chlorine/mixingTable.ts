import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import type { Strength } from "../../chlorine/availableChlorine.ts";
import { mixingRemark } from "../../chlorine/mixingRemark.ts";
import { strengthAfterCarryIn } from "../../chlorine/strengthAfterCarryIn.ts";
import type { ComputedRow, ComputedTable } from "../../computedTable.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import { say } from "../../say.ts";
import { lotsSheet } from "../../sheets/lots.ts";
import { mixingSheet } from "../../sheets/mixing.ts";
import { sources } from "../../sources.ts";
import type { IsoDate } from "../../values/date.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { isMixed } from "./litresOfPreparation.ts";
import { type LotPreparation, preparationOn, strongLots } from "./lotPreparation.ts";
import { preparationCells } from "./preparationCells.ts";
import type { ProductFigures } from "./productFigures.ts";
import { remarkOnLot } from "./remarkOnLot.ts";

/** One row for each product and usable lot; a product without one is shown at its label's strength. */
export function mixingTable(
	unit: UnitFigures,
	firstDay: IsoDate,
): ComputedTable<typeof mixingSheet> {
	if (!isMixed(unit.read)) return { sheet: mixingSheet, rows: [] };
	const rows = unit.products.flatMap((product) => {
		const lots = strongLots(unit, product, firstDay);
		const shown = lots.length > 0 ? lots : [preparationOn(unit, product, firstDay)];
		return shown.map((lot, at) =>
			mixingRow(unit, product, lot, remarkOnLot(unit.read, product, lot, shown[at + 1])),
		);
	});
	return { sheet: mixingSheet, rows };
}

function mixingRow(
	unit: UnitFigures,
	product: ProductFigures,
	{ lot, strength, preparation }: LotPreparation,
	ofLot: Figure<string>,
): ComputedRow<typeof mixingSheet> {
	const { settings } = unit.read;
	const mixed = preparationCells(preparation);
	const made = mixed.strength_made_pct as Figure;
	const afterCarryIn = derive(strengthAfterCarryIn, {
		strengthMadePct: made,
		bathLitres: settings.soak_fill_litres,
		kits: unit.kitsThroughBath,
		mlPerKit: settings.carry_in_ml_per_kit,
	});
	return {
		product: product.name,
		lot: lotName(lot),
		strength_today_g_per_l: gramsPerLitre(strength),
		...mixed,
		strength_after_carry_in_pct: afterCarryIn,
		remark: derive(mixingRemark, {
			strengthMadePct: made,
			afterCarryInPct: afterCarryIn,
			targetPct: settings.target_strength_pct,
			wantedPct: unit.startPct,
			kits: unit.kitsThroughBath,
			ofLot,
		}),
	};
}

function lotName(lot: LotPreparation["lot"]): Figure<string> {
	return lot ? cellFigure(lotsSheet, lot, "lot") : nameFigure(say`Lot`, "");
}

const litreStrength = calculation<{ strength: Strength }, number>({
	key: "strength_g_per_l",
	label: say`Strength of the product`,
	unit: "g/L",
	formula: say`Grams of available chlorine in a litre of the liquid.`,
	source: sources.onePercent,
	inputs: { strength: { label: say`Available chlorine in the product`, unit: "g/L" } },
	example: {
		inputs: { strength: { form: "liquid", gramsPerLitre: 35 } },
		result: 35,
		within: 0,
	},
	compute: ({ strength }) => (strength as Strength & { form: "liquid" }).gramsPerLitre,
});

/** Only a liquid has grams per litre; powder and tablets leave the cell blank. */
function gramsPerLitre(strength: Figure<Strength>): Figure<number | null> {
	if (strength.outcome.ok && strength.outcome.value.form !== "liquid")
		return nameFigure(say`Strength of the product`, null);
	return derive(litreStrength, { strength });
}
