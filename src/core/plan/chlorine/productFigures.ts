import { type Figure, refusedFigure } from "../../calculation.ts";
import type { Strength } from "../../chlorine/availableChlorine.ts";
import { firstReasons } from "../../outcome.ts";
import { problem } from "../../problem.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { type ChlorineRow, chlorineSheet } from "../../sheets/chlorine.ts";
import { strengthOnLabel } from "./strengthOnLabel.ts";

/** A chlorine product with the strength on its label. */
export interface ProductFigures {
	readonly name: Figure<string>;
	readonly row: GoodRow<ChlorineRow>;
	readonly inUse: boolean;
	readonly strength: Figure<Strength>;
}

/** Every product that could be understood. */
export function productFigures(read: ReadWorkbook): ProductFigures[] {
	return read.tables.chlorine.rows.map((row) => {
		return {
			name: cellFigure(chlorineSheet, row, "product"),
			row,
			inUse: row.value.in_use === "yes",
			strength: strengthOnLabel(row),
		};
	});
}

/** The product in use, or why there is not exactly one. */
export function productInUse(
	{ tables }: ReadWorkbook,
	products: readonly ProductFigures[],
): ProductFigures | Figure<never> {
	const inUse = products.filter((product) => product.inUse);
	const bad = tables.chlorine.badRows.flatMap((row) => row.problems);
	const place = { file: chlorineSheet.file, line: null, column: "in_use" };
	if (inUse.length === 1 && bad.length === 0) return inUse[0] as ProductFigures;
	const notOne = problem(place, {
		code: "product-in-use",
		received: say`${inUse.length} products in use`,
		allowed: say`exactly one product in use`,
		message: say`${inUse.length} chlorine products are marked as in use; mark exactly one with yes.`,
	});
	return refusedFigure(
		say`Product in use`,
		"",
		place,
		...(bad.length > 0 ? firstReasons(bad) : [notOne]),
	);
}
