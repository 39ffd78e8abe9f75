import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { wallTableSheet } from "../../../core/sheets/wallTable.ts";
import { counted } from "../../format/counted.ts";
import type { SheetPage } from "../../page.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { mixingCautions } from "./mixingCautions.ts";
import { wallPages } from "./wallPages.ts";
import { wallTableOut } from "./wallTableOut.ts";

/** The mixing tables to hang on the wall. */
export const wallTablePage: SheetPage = {
	sheet: wallTableSheet,
	headline: wallHeadline,
	cautions: mixingCautions,
	prints: [wallTableOut],
};

function wallHeadline(state: State): string | undefined {
	const rows = rowsOf(state.plan, wallTableSheet);
	const products = new Set(rows.map((row) => wordIn(row.product))).size;
	if (products === 0) return undefined;
	const pages = wallPages(state).length;
	return pages > products
		? say`A mixing table for the wall: ${counted(products, "product")} on ${counted(pages, "sheet")}`
		: say`A mixing table for the wall: ${counted(products, "product")}, one page each`;
}
