import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { costsSheet } from "../../../core/sheets/costs.ts";
import { journalSheet } from "../../../core/sheets/journal.ts";
import { lotsSheet } from "../../../core/sheets/lots.ts";
import { orderSheet } from "../../../core/sheets/order.ts";
import { stockSheet } from "../../../core/sheets/stock.ts";
import { stockAheadSheet } from "../../../core/sheets/stockAhead.ts";
import { supplyUseSheet } from "../../../core/sheets/supplyUse.ts";
import { counted, listed } from "../../format/counted.ts";
import { semicolon } from "../../format/semicolon.ts";
import { shownDay } from "../../format/shownDay.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSettings.ts";
import { storeBooks } from "../store/storeBooks.ts";
import { costsHeadline } from "./costsView.ts";
import { orderLines } from "./orderLines.ts";
import { orderHeadline } from "./orderWords.ts";

const MOST_NAMED = 2;

/** Titles that say the answer, for the sheets of the store; undefined where there is no answer yet. */
export const supplyHeadlines: Readonly<Record<string, (state: State) => string | undefined>> = {
	[orderSheet.file]: orderHeadline,
	[supplyUseSheet.file]: useHeadline,
	[stockSheet.file]: stockHeadline,
	[stockAheadSheet.file]: aheadHeadline,
	[lotsSheet.file]: lotsHeadline,
	[journalSheet.file]: journalHeadline,
	[costsSheet.file]: costsHeadline,
};

function useHeadline(state: State): string | undefined {
	const rows = rowsOf(state.plan, supplyUseSheet);
	if (rows.length === 0) return undefined;
	const used = rows.filter((row) => (numberIn(row.set_aside) ?? 0) > 0).length;
	const days = unitSetting(state, "plan_days") ?? 7;
	return say`Fetch ${counted(used, "item")} for ${counted(days, "day")}`;
}

function stockHeadline(state: State): string | undefined {
	const rows = rowsOf(state.plan, stockSheet);
	if (rows.length === 0) return undefined;
	const count = rows.filter((row) => wordIn(row.remark) !== "").length;
	const wasted = rows.filter((row) => (numberIn(row.wasted) ?? 0) > 0);
	const names = listed(
		wasted.map((row) => `${wordIn(row.item)} ${wordIn(row.lot)}`),
		MOST_NAMED,
	);
	const waste =
		wasted.length === 0 ? say`nothing will go to waste` : say`part will go to waste: ${names}`;
	const parts = [
		say`${counted(rows.length, "lot")} in the books`,
		waste,
		count > 0 && say`${counted(count, "lot")} to count again`,
	];
	return parts.filter(Boolean).join(semicolon);
}

function aheadHeadline(state: State): string | undefined {
	const lines = orderLines(state);
	if (lines.length === 0) return undefined;
	const [first] = lines
		.filter((line) => line.runsOutOn !== "")
		.sort((a, b) => (a.runsOutOn < b.runsOutOn ? -1 : 1));
	if (!first) return say`No item runs out in the weeks looked at`;
	return say`Without an order, ${first.item} runs out first, on ${shownDay(first.runsOutOn)}`;
}

function lotsHeadline(state: State): string | undefined {
	const { lots } = storeBooks(state.workbook);
	const firstDay = unitSetting(state, "plan_start") ?? "";
	const coming = lots.rows.filter(({ value }) => (value.arrives_on ?? "") > firstDay).length;
	if (lots.rows.length === 0) return undefined;
	return say`${counted(lots.rows.length - coming, "lot")} in the store, ${coming} on the way`;
}

function journalHeadline(state: State): string {
	const { journal } = storeBooks(state.workbook);
	const days = journal.rows.map(({ value }) => value.day).sort();
	const counts = journal.rows.filter(({ value }) => value.entry === "count");
	if (days.length === 0) return say`Nothing entered yet: stock is what the lots say`;
	const last = counts
		.map(({ value }) => value.day)
		.sort()
		.at(-1);
	const count = last ? say`last counted on ${shownDay(last)}` : say`no count yet`;
	return say`${counted(days.length, "entry")} up to ${shownDay(days.at(-1) ?? "")}; ${count}`;
}
