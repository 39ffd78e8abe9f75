import { derive, type Figure } from "../../calculation.ts";
import { availableChlorine, type Strength } from "../../chlorine/availableChlorine.ts";
import { checkedStrength } from "../../chlorine/checkedStrength.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { type ChlorineRow, chlorineSheet } from "../../sheets/chlorine.ts";

/** Available chlorine of a product as its label says it, where the label can be believed. */
export function strengthOnLabel(row: GoodRow<ChlorineRow>): Figure<Strength> {
	const place = { file: chlorineSheet.file, line: row.line, column: "strength" };
	const label = {
		form: cellFigure(chlorineSheet, row, "form"),
		strength: cellFigure(chlorineSheet, row, "strength"),
		measure: cellFigure(chlorineSheet, row, "strength_measure"),
	};
	const density = cellFigure(chlorineSheet, row, "density_kg_per_l");
	const available = derive(availableChlorine, { ...label, density }, place);
	const confirmed = cellFigure(chlorineSheet, row, "label_confirmed");
	return derive(checkedStrength, { ...label, available, confirmed }, place);
}
