import {
	calculation,
	derive,
	type Figure,
	listOf,
	nameFigure,
	refusedFigure,
	typedFigure,
} from "../calculation.ts";
import type { ComputedRow, ComputedTable } from "../computedTable.ts";
import { countTimes } from "../countTimes.ts";
import { answer, valueIn } from "../outcome.ts";
import { problem } from "../problem.ts";
import type { GoodRow, ReadTable } from "../read/goodRow.ts";
import { say } from "../say.ts";
import type { RowOf } from "../sheet.ts";
import { combinedOrderSheet } from "../sheets/combinedOrder.ts";
import { orderSheet } from "../sheets/order.ts";
import { sources } from "../sources.ts";
import { packsFor } from "../stock/orderPacks.ts";
import { total } from "../total.ts";

export type OrderRow = RowOf<typeof orderSheet>;

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

const packsOfNeed = calculation<{ need: number; packSize: number }, number>({
	key: "combined_packs",
	label: say`Packs to order`,
	unit: say`packs`,
	formula: say`Needs of the units that are short, added up ÷ pack size.`,
	source: sources.periodicReview,
	rounding: say`Up to whole packs, once for all units together.`,
	inputs: {
		need: { label: say`Needed`, unit: inMeasure, min: 0 },
		packSize: { label: say`Pack size`, unit: inMeasure, min: 1e-9 },
	},
	example: { inputs: { need: 150, packSize: 100 }, result: 2, within: 0 },
	compute: ({ need, packSize }) => packsFor(need, packSize),
});

const packs = { label: say`Packs to order`, unit: say`packs` };
const quantity = countTimes("combined_quantity", say`Quantity to order`, inMeasure, packs, {
	label: say`Pack size`,
	unit: inMeasure,
});
const cost = countTimes("combined_cost", say`Cost`, say`currency`, packs, {
	label: say`Price of a pack`,
	unit: say`currency`,
});

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

/** What a unit is short of; a unit with more than enough is short of nothing. */
function needOf({ target_stock, usable, on_order }: OrderRow): number {
	return Math.max(0, (target_stock ?? 0) - (usable ?? 0) - (on_order ?? 0));
}

/** A row whose plan had no answer has blanks, and is not the same as needing nothing. */
function hasNeed({ target_stock, usable, on_order }: OrderRow): boolean {
	return target_stock !== null && usable !== null && on_order !== null;
}

function rowOf(parts: readonly Part[]): ComputedRow<typeof combinedOrderSheet> {
	const { item, measure } = (parts[0] as Part).row.value;
	const need = added(parts, "target_stock", needOf);
	const packSize = packSizeOf(parts);
	const ordered = derive(packsOfNeed, { need, packSize });
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
		order_packs: ordered,
		order_quantity: derive(quantity, { count: ordered, each: packSize }),
		cost:
			price === undefined
				? nameFigure(say`Cost`, null)
				: derive(cost, { count: ordered, each: nameFigure(say`Price of a pack`, price) }),
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

function added(
	parts: readonly Part[],
	column: "usable" | "on_order" | "use_expected" | "target_stock",
	of: (row: OrderRow) => number = (row) => row[column] ?? 0,
): Figure {
	const { label } = orderSheet.columns[column];
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

/** The pack's size: as stated, else what the packs ordered come to. */
function sizeOf({ pack_size, order_packs, order_quantity }: OrderRow): number[] {
	if (pack_size) return [pack_size];
	// Files hold six decimals; more would tell 0.3 ÷ 3 from 0.1.
	return order_packs && order_quantity ? [Number((order_quantity / order_packs).toFixed(6))] : [];
}

/** The price of a pack of the size used; a smaller pack's price says nothing about it. */
function priceOfPack(parts: readonly Part[], size: number | undefined): number | undefined {
	return parts
		.filter(({ row }) => sizeOf(row.value).every((each) => each === size))
		.flatMap(({ row }) => priceOf(row.value))[0];
}

function priceOf({ pack_price, cost: paid, order_packs }: OrderRow): number[] {
	if (pack_price !== null) return [pack_price];
	return paid !== null && order_packs ? [paid / order_packs] : [];
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
	return refusedFigure(
		say`Pack size`,
		inMeasure,
		place,
		problem(place, {
			code: "no-pack-size",
			received: "",
			allowed: say`a pack size, or packs and the quantity they come to`,
			message: say`No unit's file says how much of ${row.value.item} is in a pack, so packs cannot be counted.`,
		}),
	);
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
	const said =
		sizes.size > 1
			? [
					say`The units name packs of ${[...sizes].map((size) => say`${size}`).join(", ")}; the largest is used.`,
				]
			: [];
	const unknown = parts.filter(({ row }) => !hasNeed(row.value)).map(nameOf);
	if (unknown.length > 0)
		said.push(say`No stock or target given, so not counted: ${unknown.join(", ")}.`);
	const urgent = parts.filter(({ row }) => row.value.emergency === "yes").map(nameOf);
	if (urgent.length > 0) said.push(`${RUNS_OUT_FIRST} ${urgent.join(", ")}.`);
	return said.join(" ");
}
