import { textsOf } from "../../read/textsOf.ts";
import { itemsSheet } from "../../sheets/items.ts";
import type { Workbook } from "../../workbook.ts";
import { settingEntry } from "../begin/settingEntry.ts";
import { wrongFor } from "../notAllowed.ts";
import { type NewText, withTexts } from "../withTexts.ts";
import type { OrderedItem } from "./ordersPlaced.ts";

/** The money there is for the order, as an entry. */
export const moneyEntry = settingEntry("order_money");

const column = "depot_packs";

/** What the depot sends of an item at most, as typed; "" where it sends all. */
export function depotPacksOf(workbook: Workbook, item: string): string {
	const texts = textsOf(workbook, itemsSheet);
	const row = texts.rows.find((cells) => texts.cell(cells, "item").trim() === item);
	return row ? texts.cell(row, column).trim() : "";
}

/** The workbook with what the depot sends of some items, or words on what is wrong with one of them. */
export function withDepotPacks(
	workbook: Workbook,
	sent: readonly OrderedItem[],
): Workbook | string {
	const wrong = sent
		.map(({ packs }) => wrongFor(itemsSheet.columns[column], packs))
		.find((words) => words !== undefined);
	if (wrong !== undefined) return wrong;
	const typed = new Map(sent.map(({ item, packs }) => [item, packs.trim()]));
	const texts = textsOf(workbook, itemsSheet);
	const changes = texts.rows.flatMap((cells, row): NewText[] => {
		const text = typed.get(texts.cell(cells, "item").trim());
		if (text === undefined || text === texts.cell(cells, column).trim()) return [];
		return [{ row, column, text }];
	});
	return changes.length === 0 ? workbook : withTexts(workbook, itemsSheet.file, changes);
}

/** The workbook without money and packs for an order: they were for the one that has gone out. The same workbook where there are none. */
export function withoutOrderLimits(workbook: Workbook): Workbook {
	const texts = textsOf(workbook, itemsSheet);
	const sent = texts.rows.map((cells) => ({ item: texts.cell(cells, "item").trim(), packs: "" }));
	const all = withDepotPacks(workbook, sent) as Workbook;
	return moneyEntry.read(all) === "" ? all : (moneyEntry.write(all, "") as Workbook);
}
