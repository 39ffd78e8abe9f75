import { say } from "../../../core/say.ts";
import { type Child, el } from "../../dom/el.ts";
import { amountOf } from "../../format/amountOf.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownNumber, shownPlain } from "../../format/shownNumber.ts";
import { type PaperColumn, paperTable } from "../../print/paperTable.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { type OrderLine, orderLines } from "./orderLines.ts";
import { type TakenOrder, takenOrder } from "./takenOrder.ts";

const urgent = {
	emergency: say`URGENT: runs out before an order can arrive; find some elsewhere today`,
	late: say`LATE: should have been ordered already`,
	now: say`ORDER NOW`,
	unknown: say`NEEDS A NUMBER: one has to be put right first`,
} as const;

/** What to order today, the most pressing first, over the sheet that has every item. */
export function orderView(state: State): HTMLElement | undefined {
	const taken = takenOrder(state);
	const currency = unitSetting(state, "currency") ?? "";
	const table = shownOrder(orderLines(state), currency, false, taken);
	if (!table) return undefined;
	return el(
		"div",
		{ class: "combined", tabindex: 0, role: "region", "aria-label": say`What to order today` },
		table,
	);
}

/** Items to order, by how pressing they are; undefined where there are none. @param toTick with room to tick what has been ordered */
export function shownOrder(
	lines: readonly OrderLine[],
	currency: string,
	toTick: boolean,
	taken: TakenOrder | undefined,
): HTMLElement | undefined {
	const packs = taken?.isLess ? takenPacks(taken) : undefined;
	const parts = (["emergency", "late", "now", "unknown"] as const).map((urgency) => ({
		heading: urgent[urgency],
		rows: lines.filter((line) => line.urgency === urgency).map((line) => rowOf(line, packs)),
	}));
	if (parts.every(({ rows }) => rows.length === 0)) return undefined;
	const columns: readonly PaperColumn[] = [
		{ label: say`Item` },
		{ label: say`Order`, unit: say`packs`, numeric: true },
		...(packs ? [{ label: say`Take`, unit: say`packs`, numeric: true }] : []),
		{ label: say`Pack of`, numeric: true },
		{ label: say`That is`, numeric: true },
		{ label: say`A pack costs`, unit: currency, numeric: true },
		{ label: say`Cost`, unit: currency, numeric: true },
		{ label: say`Order by` },
	];
	const ticked = { label: say`Ordered ✓`, blank: true };
	return paperTable(say`What to order`, toTick ? [...columns, ticked] : columns, parts);
}

/** Packs taken of each item ordered; a dash where nothing tells. */
function takenPacks({ lines }: TakenOrder): ReadonlyMap<string, string> {
	return new Map(
		lines.map(({ item, taken }) => [item, taken === undefined ? "–" : shownPlain(taken)]),
	);
}

function rowOf(line: OrderLine, taken: ReadonlyMap<string, string> | undefined): Child[] {
	const amount = (quantity: number | undefined) =>
		quantity === undefined ? "–" : amountOf(quantity, line.measure);
	const remark = [line.remark, line.waitsFor].filter(Boolean).join(" ");
	const money = (sum: number | undefined) => (sum === undefined ? "" : shownNumber(sum, 2));
	return [
		el("span", {}, line.item, remark !== "" && el("span", { class: "paper-remark" }, remark)),
		el(taken ? "span" : "strong", {}, line.packs === undefined ? "–" : shownPlain(line.packs)),
		...(taken ? [el("strong", {}, taken.get(line.item) ?? "–")] : []),
		amount(line.packSize),
		amount(line.quantity),
		money(line.price),
		money(line.cost),
		line.urgency === "now" && line.orderBy !== "" ? shownDay(line.orderBy) : say`today`,
	];
}
