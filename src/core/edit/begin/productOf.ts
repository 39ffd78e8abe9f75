import { textsOf } from "../../read/textsOf.ts";
import { say } from "../../say.ts";
import { chlorineSheet } from "../../sheets/chlorine.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { lotsSheet } from "../../sheets/lots.ts";
import { readNumber } from "../../values/number.ts";
import type { Workbook } from "../../workbook.ts";
import { meaning } from "../meaning.ts";

const { columns } = chlorineSheet;

export type Form = "liquid" | "powder" | "tablet";

/** What a product is called until the unit names it, and how it is counted in the store. */
export const byForm: Readonly<Record<Form, { readonly name: string; readonly measure: string }>> = {
	liquid: { name: say`Liquid bleach`, measure: "mL" },
	powder: { name: say`Chlorine powder`, measure: "g" },
	tablet: { name: say`Chlorine tablets`, measure: "tablet" },
};

/** The product in use (else the first one listed) with its rows in the three sheets that speak of it, where they are there. */
export function productOf(workbook: Workbook) {
	const chlorine = textsOf(workbook, chlorineSheet);
	const items = textsOf(workbook, itemsSheet);
	const lots = textsOf(workbook, lotsSheet);
	const inUse = chlorine.rows.findIndex(
		(row) => meaning(columns.in_use, chlorine.cell(row, "in_use")) === "yes",
	);
	const row = Math.max(0, inUse);
	const product = chlorine.rows[row];
	const cell = (column: string) => (product ? chlorine.cell(product, column).trim() : "");
	const name = cell("product");
	const item = items.rows.findIndex(
		(each) => items.cell(each, "item").trim() === (name || undefined),
	);
	const ofProduct = lots.rows.flatMap((cells, at) =>
		name !== "" && lots.cell(cells, "item").trim() === name ? [{ at, cells }] : [],
	);
	const itemCells = items.rows[item];
	return {
		row,
		cell,
		name,
		form: meaning(columns.form, cell("form")),
		strengthMeasure: meaning(columns.strength_measure, cell("strength_measure")),
		hasItem: itemCells !== undefined,
		itemRow: item < 0 ? undefined : item,
		/** In which its item is counted; "" where nothing says. */
		measure: itemCells ? items.cell(itemCells, "measure").trim() : "",
		packSize: itemCells && readNumber(items.cell(itemCells, "pack_size")),
		/** Rows of its lots. */
		lots: ofProduct.map(({ at }) => at),
		lotRow: ofProduct[0]?.at,
		quantities: ofProduct.map((lot) => lots.cell(lot.cells, "quantity").trim()),
	};
}
