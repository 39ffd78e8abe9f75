import type { ComputedTable } from "../../../core/computedTable.ts";
import { say } from "../../../core/say.ts";
import type { combinedOrderSheet } from "../../../core/sheets/combinedOrder.ts";
import type { UnitOrder } from "../../../core/units/combineOrders.ts";
import { el } from "../../dom/el.ts";
import { counted } from "../../format/counted.ts";
import { semicolon } from "../../format/semicolon.ts";
import { shownNumber } from "../../format/shownNumber.ts";
import type { PrintOut } from "../../page.ts";
import { headLine } from "../../print/paperHead.ts";
import { signatures } from "../../print/signatures.ts";
import { cautionList } from "../../sheet/cautionList.ts";
import { storeCautions } from "../store/storeCautions.ts";
import { combinedHeadline, combinedLines } from "./combinedLines.ts";
import { combinedTable, type Shares } from "./combinedTable.ts";

/** More names than these would fill the page; the saved list has them all. */
const MOST_NAMED = 60;

/** The combined list on paper, with or without what each unit gets. */
export function combinedPage(
	orders: readonly UnitOrder[],
	table: ComputedTable<typeof combinedOrderSheet>,
	shares: Shares,
): PrintOut {
	return { name: say`Print the list`, pages: () => [pageOf(orders, table, shares)] };
}

function pageOf(
	orders: readonly UnitOrder[],
	table: ComputedTable<typeof combinedOrderSheet>,
	shares: Shares,
): HTMLElement {
	const lines = combinedLines(table);
	const names = orders.map(({ file, rows }) => rows.rows[0]?.value.unit_name || file);
	const left = names.length - MOST_NAMED;
	const cost = lines.reduce((sum, line) => sum + (line.cost ?? 0), 0);
	const unpriced = lines.filter((line) => (line.packs ?? 0) > 0 && line.cost === undefined);
	return el(
		"section",
		{ class: "lying" },
		headLine(say`Combined order of ${counted(orders.length, "unit")}`, ""),
		el("h1", {}, combinedHeadline(orders, lines)),
		combinedTable(lines, shares),
		el(
			"p",
			{ class: "paper-total" },
			el("strong", {}, say`Cost in all: ${shownNumber(cost, 2)}`),
			unpriced.length > 0 &&
				say`, without the price of ${unpriced.map((line) => line.item).join(", ")}`,
			". ",
			say`Prices as the units give them.`,
		),
		el(
			"p",
			{ class: "paper-small" },
			left > 0
				? say`Units: ${names.slice(0, MOST_NAMED).join(semicolon)} and ${left} more.`
				: say`Units: ${names.join(semicolon)}.`,
		),
		cautionList(storeCautions),
		signatures(say`Prepared by, date`, say`Checked by, date`, say`Approved by, date`),
	);
}
