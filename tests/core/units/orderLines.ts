import type { AnyRow } from "../../../src/core/computedTable.ts";
import { readTable } from "../../../src/core/read/readTable.ts";
import { orderSheet } from "../../../src/core/sheets/order.ts";
import { combineOrders, type UnitOrder } from "../../../src/core/units/combineOrders.ts";
import { valueIn } from "../planCells.ts";

const contract =
	"item,measure,usable,on_order,use_expected,target_stock,order_packs,order_quantity,cost,run_out_on,order_by,months_of_stock,remark";
const added = ",emergency,pack_size,pack_price,unit_name";

/** One row of an order file, with what matters here given. */
export interface Line {
	readonly item?: string;
	readonly measure?: string;
	readonly usable?: number | "";
	readonly onOrder?: number;
	readonly target?: number | "";
	readonly packs?: number | "";
	readonly quantity?: number | "";
	readonly cost?: number | "";
	readonly runOut?: string;
	readonly orderBy?: string;
	readonly emergency?: "yes" | "no";
	readonly packSize?: number | "";
	readonly price?: number | "";
	readonly unit?: string;
}

function cells(of: Line, isFull: boolean): string[] {
	const { item = "gauze", measure = "piece", usable = 0, onOrder = 0, target = 0 } = of;
	const { packs = "", quantity = "", cost = "", runOut = "", orderBy = "" } = of;
	const row = [item, measure, usable, onOrder, 10, target, packs, quantity, cost];
	const more = [of.emergency ?? "no", of.packSize ?? "", of.price ?? "", of.unit ?? ""];
	return [...row, runOut, orderBy, "", "", ...(isFull ? more : [])].map(String);
}

export function order(file: string, lines: readonly Line[], isFull = true): UnitOrder {
	const header = (contract + (isFull ? added : "")).split(",");
	const rows = readTable(
		{ ...orderSheet, file },
		{ header, rows: lines.map((line) => cells(line, isFull)) },
	);
	return { file, rows };
}

export const combined = (...orders: UnitOrder[]) => combineOrders(orders).rows;
export const cell = (row: AnyRow | undefined, column: string) => valueIn(row?.[column]);
export const two = (a: Line, b: Line) =>
	combined(order("a.csv", [{ unit: "A", ...a }]), order("b.csv", [{ unit: "B", ...b }]));
