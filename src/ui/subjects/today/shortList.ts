import { countedTooLongAgo } from "../../../core/plan/store/countAge.ts";
import { readToday } from "../../../core/plan/today/readToday.ts";
import { say } from "../../../core/say.ts";
import { orderSheet } from "../../../core/sheets/order.ts";
import { stockSheet } from "../../../core/sheets/stock.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { type Child, el } from "../../dom/el.ts";
import { counted, listed } from "../../format/counted.ts";
import { shownDay } from "../../format/shownDay.ts";
import { hashOf } from "../../shell/hashOf.ts";
import type { State } from "../../state/store.ts";
import { type OrderLine, orderLines } from "../order/orderLines.ts";

/** Items that are named in one line. */
const MOST_NAMED = 4;

/** What runs short before an order can come, what to order and what to count; empty where there is nothing. */
export function shortList(state: State, day: IsoDate): HTMLElement | undefined {
	const lines = orderLines(state);
	const found = [
		...lines.filter(({ urgency }) => urgency === "emergency").map(emergency),
		...lines.filter(({ urgency }) => urgency === "late").map((line) => toOrder(line, true)),
		...lines.filter(({ urgency }) => urgency === "now").map((line) => toOrder(line, false)),
		...toCount(state, day),
	];
	return found.length === 0
		? undefined
		: el("ul", { class: "short-list" }, ...found.map((words) => el("li", {}, ...words)));
}

function link(file: string, words: string): HTMLElement {
	return el("a", { href: hashOf(file) }, el("strong", {}, words));
}

function emergency({ item, runsOutOn }: OrderLine): Child[] {
	const when =
		runsOutOn === ""
			? say`${item} runs out before an order can arrive: find some elsewhere today.`
			: say`${item} runs out on ${shownDay(runsOutOn)}, before an order can arrive: find some elsewhere today.`;
	return [link(orderSheet.file, say`Short`), " ", when];
}

function toOrder({ item, packs, orderBy }: OrderLine, isLate: boolean): Child[] {
	const what = say`${item}: ${counted(packs ?? 0, "pack")}`;
	const words = isLate
		? say`${what}; should have been ordered by ${shownDay(orderBy)}.`
		: orderBy === ""
			? say`${what}, today.`
			: say`${what}, by ${shownDay(orderBy)}.`;
	return [link(orderSheet.file, say`Order`), " ", words];
}

function toCount(state: State, day: IsoDate): Child[][] {
	const items = countedTooLongAgo(readToday(state.workbook, state.today), day).map(
		({ item }) => item,
	);
	if (items.length === 0) return [];
	return [
		[
			link(stockSheet.file, say`To count`),
			" ",
			say`${listed(items, MOST_NAMED)}: counted too long ago.`,
		],
	];
}
