import type { ComputedRow } from "../../../core/computedTable.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { isLate } from "../../../core/plan/store/daysLate.ts";
import { keptSince } from "../../../core/plan/store/keptSince.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { orderSheet } from "../../../core/sheets/order.ts";
import { waitsFor } from "../../format/waitsFor.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import { sentenceIn } from "../../state/sentenceIn.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";

/**
 * How pressing an item is. "emergency": runs out before an order can arrive.
 * "late": should have been ordered before the first day, and the workbook was kept by then. "now": to order today.
 * "enough": nothing to do. "unknown": a number waits for something put right.
 */
export type Urgency = "emergency" | "late" | "now" | "enough" | "unknown";

/** One item of the order, as a storekeeper reads it. Quantities are in the item's measure. */
export interface OrderLine {
	readonly item: string;
	readonly measure: string;
	readonly urgency: Urgency;
	/** Undefined where it waits for something. */
	readonly packs: number | undefined;
	readonly packSize: number | undefined;
	readonly quantity: number | undefined;
	readonly price: number | undefined;
	readonly cost: number | undefined;
	readonly onOrder: number | undefined;
	readonly runsOutOn: string;
	readonly orderBy: string;
	readonly remark: string;
	/** What it waits for, in words; "" where it waits for nothing. */
	readonly waitsFor: string;
}

const order: readonly Urgency[] = ["emergency", "late", "now", "unknown", "enough"];

/** The items of the order, the most pressing first, each kind in the order of the store's list. */
export function orderLines(state: State): OrderLine[] {
	const firstDay = unitSetting(state, "plan_start") ?? "";
	const knownSince = keptSince(readWorkbook(state.workbook).tables, firstDay);
	const lines = rowsOf(state.plan, orderSheet).map((row) => lineOf(row, firstDay, knownSince));
	return order.flatMap((urgency) => lines.filter((line) => line.urgency === urgency));
}

function lineOf(
	row: ComputedRow<typeof orderSheet>,
	firstDay: string,
	knownSince: string,
): OrderLine {
	const packs = numberIn(row.order_packs);
	const orderBy = wordIn(row.order_by);
	return {
		item: wordIn(row.item),
		measure: wordIn(row.measure),
		urgency: urgencyOf(packs, wordIn(row.emergency) === "yes", orderBy, firstDay, knownSince),
		packs,
		packSize: numberIn(row.pack_size),
		quantity: numberIn(row.order_quantity),
		price: numberIn(row.pack_price),
		cost: numberIn(row.cost),
		onOrder: numberIn(row.on_order),
		runsOutOn: wordIn(row.run_out_on),
		orderBy,
		remark: sentenceIn(row.remark),
		waitsFor: waitsFor(row.order_packs?.outcome),
	};
}

function urgencyOf(
	packs: number | undefined,
	isEmergency: boolean,
	orderBy: string,
	firstDay: string,
	knownSince: string,
): Urgency {
	if (isEmergency) return "emergency";
	if (packs === undefined) return "unknown";
	if (packs === 0) return "enough";
	return isLate({ packs, orderBy, knownSince, firstDay }) ? "late" : "now";
}
