import { say } from "../../../core/say.ts";
import { type Child, el } from "../../dom/el.ts";
import { amountOf } from "../../format/amountOf.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownNumber, shownPlain } from "../../format/shownNumber.ts";
import { type PaperColumn, paperTable } from "../../print/paperTable.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { type OrderLine, orderLines } from "./orderLines.ts";
import { type TakenLine, type TakenOrder, takenOrder } from "./takenOrder.ts";

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
	const takenOf = taken?.isLess
		? new Map(taken.lines.map((line) => [line.item, line] as const))
		: undefined;
	const parts = (["emergency", "late", "now", "unknown"] as const).map((urgency) => ({
		heading: urgent[urgency],
		rows: lines.filter((line) => line.urgency === urgency).map((line) => rowOf(line, takenOf)),
	}));
	if (parts.every(({ rows }) => rows.length === 0)) return undefined;
	const columns: readonly PaperColumn[] = [
		{ label: say`Item` },
		{ label: takenOf ? say`Needed` : say`Order`, unit: say`packs`, numeric: true },
		...(takenOf ? [{ label: say`Take`, unit: say`packs`, numeric: true }] : []),
		{ label: say`Pack of`, numeric: true },
		{ label: say`That is`, numeric: true },
		{ label: say`A pack costs`, unit: currency, numeric: true },
		{ label: say`Cost`, unit: currency, numeric: true },
		{ label: say`Order by` },
	];
	const ticked = { label: say`Ordered ✓`, blank: true };
	return paperTable(say`What to order`, toTick ? [...columns, ticked] : columns, parts);
}

/** @param takenOf what can be had, where that is less than the whole order: then quantity and cost are of that */
function rowOf(line: OrderLine, takenOf: ReadonlyMap<string, TakenLine> | undefined): Child[] {
	const amount = (quantity: number | undefined) =>
		quantity === undefined ? "–" : amountOf(quantity, line.measure);
	const packs = (count: number | undefined) => (count === undefined ? "–" : shownPlain(count));
	const remark = [line.remark, line.waitsFor].filter(Boolean).join(" ");
	const money = (sum: number | undefined) => (sum === undefined ? "" : shownNumber(sum, 2));
	// What is not ordered at all is not among what is taken.
	const taken = takenOf?.get(line.item);
	const had = taken
		? { packs: taken.taken, quantity: times(taken.taken, line.packSize), cost: taken.cost }
		: line;
	return [
		el("span", {}, line.item, remark !== "" && el("span", { class: "paper-remark" }, remark)),
		...(takenOf ? [packs(line.packs)] : []),
		el("strong", {}, packs(had.packs)),
		amount(line.packSize),
		amount(had.quantity),
		money(line.price),
		money(had.cost),
		line.urgency === "now" && line.orderBy !== "" ? shownDay(line.orderBy) : say`today`,
	];
}

function times(packs: number | undefined, size: number | undefined): number | undefined {
	return packs === undefined || size === undefined ? undefined : packs * size;
}
