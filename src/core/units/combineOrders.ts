import {
	derive,
	type Figure,
	listOf,
	nameFigure,
	refusedFigure,
	typedFigure,
} from "../calculation.ts";
import type { ComputedRow, ComputedTable } from "../computedTable.ts";
import { answer, valueIn } from "../outcome.ts";
import type { GoodRow, ReadTable } from "../read/goodRow.ts";
import { say } from "../say.ts";
import { combinedOrderSheet } from "../sheets/combinedOrder.ts";
import { orderSheet } from "../sheets/order.ts";
import { total } from "../total.ts";
import { hasNeed, needOf, type OrderRow, priceOf, sizeOf } from "./needOf.ts";
import { orderOfNeed } from "./orderOfNeed.ts";
import { noPackSize, severalSizes } from "./packProblems.ts";

/** One unit's order file. */
export interface UnitOrder {
	/** Name of the file, which stands in for a unit that does not say its name. */
	readonly file: string;
	readonly rows: ReadTable<OrderRow>;
}

interface Part {
	readonly file: string;
	readonly row: GoodRow<OrderRow>;
}

const inMeasure = say`in the item's measure`;
const sum = total("sum", say`Of all units`, inMeasure);

/** Several units' order files as one list; the same item in another measure is a row of its own. */
export function combineOrders(
	orders: readonly UnitOrder[],
): ComputedTable<typeof combinedOrderSheet> {
	const groups = new Map<string, Part[]>();
	for (const { file, rows } of orders)
		for (const row of rows.rows) {
			const key = JSON.stringify([row.value.item, row.value.measure]);
			const group = groups.get(key);
			if (group) group.push({ file, row });
			else groups.set(key, [{ file, row }]);
		}
	return { sheet: combinedOrderSheet, rows: [...groups.values()].map(rowOf) };
}

function rowOf(parts: readonly Part[]): ComputedRow<typeof combinedOrderSheet> {
	const { item, measure } = (parts[0] as Part).row.value;
	const need = added(parts, "target_stock", needOf);
	const packSize = packSizeOf(parts);
	const price = priceOfPack(parts, valueIn(packSize));
	const short = parts.filter(({ row }) => needOf(row.value) > 0);
	return {
		item: nameFigure(say`Item`, item),
		measure: nameFigure(say`Measure`, measure),
		usable: added(parts, "usable"),
		on_order: added(parts, "on_order"),
		use_expected: added(parts, "use_expected"),
		target_stock: added(parts, "target_stock"),
		need,
		...orderOfNeed(need, packSize, price),
		run_out_on: nameFigure(say`First runs out on`, earliest(parts, "run_out_on")),
		order_by: nameFigure(say`Order by`, earliest(parts, "order_by")),
		units: nameFigure(say`Units`, new Set(parts.map(nameOf)).size),
		split: nameFigure(
			say`Split`,
			short
				.map((part) => say`${nameOf(part)}: ${Number(needOf(part.row.value).toFixed(3))}`)
				.join("; "),
		),
		remark: nameFigure(say`Remark`, remarkOf(parts)),
	};
}

function nameOf({ file, row }: Part): string {
	return row.value.unit_name || file;
}

/** What of it is known; where no unit says any, it is blank. */
function added(
	given: readonly Part[],
	column: "usable" | "on_order" | "use_expected" | "target_stock",
	of: (row: OrderRow) => number = (row) => row[column] ?? 0,
): Figure<number | null> {
	const { label } = orderSheet.columns[column];
	const parts = given.filter(({ row }) => row.value[column] !== null);
	if (parts.length === 0) return nameFigure(label, null);
	const amounts = answer(parts.map(({ row }) => of(row.value)));
	const named = () =>
		Object.fromEntries(
			parts.map(({ file, row: { line, value } }, i): [string, Figure] => [
				`${file} ${line} (${i + 1})`,
				typedFigure(label, inMeasure, of(value), { file, line, column }),
			]),
		);
	return derive(sum, { parts: listOf(say`Units`, inMeasure, amounts, named) });
}

/** The price of a pack of the size used; a smaller pack's price says nothing about it. */
function priceOfPack(parts: readonly Part[], size: number | undefined): number | undefined {
	return parts
		.filter(({ row }) => sizeOf(row.value).every((each) => each === size))
		.flatMap(({ row }) => priceOf(row.value))[0];
}

/** The largest pack that any unit names; where none does, there is nothing to round to. */
function packSizeOf(parts: readonly Part[]): Figure {
	const sizes = parts.flatMap(({ row }) => sizeOf(row.value));
	const { file, row } = parts[0] as Part;
	const place = { file, line: row.line, column: "pack_size" };
	if (sizes.length > 0) {
		const largest = sizes.reduce((most, size) => Math.max(most, size));
		return typedFigure(say`Pack size`, inMeasure, largest, place);
	}
	if (parts.every((part) => needOf(part.row.value) === 0))
		return typedFigure(say`Pack size`, inMeasure, 1, place);
	return refusedFigure(say`Pack size`, inMeasure, place, noPackSize(place, row.value.item));
}

function earliest(parts: readonly Part[], column: "run_out_on" | "order_by"): string {
	let first = "";
	for (const { row } of parts) {
		const date = row.value[column];
		if (date && (first === "" || date < first)) first = date;
	}
	return first;
}

/** Begins the remark that names the units which run out before an order can arrive; by it their items are known. */
export const RUNS_OUT_FIRST = say`Runs out before an order can arrive:`;

function remarkOf(parts: readonly Part[]): string {
	const sizes = new Set(parts.flatMap(({ row }) => sizeOf(row.value)));
	const said = sizes.size > 1 ? [severalSizes(sizes)] : [];
	const unknown = parts.filter(({ row }) => !hasNeed(row.value)).map(nameOf);
	if (unknown.length > 0)
		said.push(say`No stock or target given, so not counted: ${unknown.join(", ")}.`);
	const urgent = parts.filter(({ row }) => row.value.emergency === "yes").map(nameOf);
	if (urgent.length > 0) said.push(`${RUNS_OUT_FIRST} ${urgent.join(", ")}.`);
	return said.join(" ");
}
