import { derive, type Figure, nameFigure, refusedFigure, typedFigure } from "../calculation.ts";
import type { ComputedRow, ComputedTable } from "../computedTable.ts";
import { advice, nowhere, type Problem } from "../problem.ts";
import { say } from "../say.ts";
import { districtStockSheet } from "../sheets/districtStock.ts";
import { unitsOrderSheet } from "../sheets/unitsOrder.ts";
import type { ItemNames } from "./itemNames.ts";
import { ItemSum } from "./itemSum.ts";
import type { OrderRow } from "./needOf.ts";
import { isKnown, lessStore, orderOfNeed } from "./orderOfNeed.ts";
import { noPackSize, severalSizes } from "./packProblems.ts";
import type { InStore } from "./storeStock.ts";

const { columns } = unitsOrderSheet;
const place = { ...nowhere, file: unitsOrderSheet.file };

/**
 * The order of a district, added up unit by unit: as large as its list of items, however
 * many its units. An item in another measure is a row of its own.
 */
export class DistrictOrder {
	readonly #sums = new Map<string, ItemSum>();
	readonly #nameOf: ItemNames;

	constructor(nameOf: ItemNames = (item) => item) {
		this.#nameOf = nameOf;
	}

	/** One unit's order. */
	add(rows: readonly OrderRow[]): void {
		const own = new Map<ItemSum, OrderRow[]>();
		for (const row of rows) {
			const item = this.#nameOf(row.item);
			const key = JSON.stringify([item, row.measure]);
			const sum = this.#sums.get(key) ?? new ItemSum(item, row.measure);
			this.#sums.set(key, sum);
			own.set(sum, [...(own.get(sum) ?? []), row]);
		}
		for (const [sum, ofItem] of own) sum.add(ofItem);
	}

	/** @param store what the district's own store has, by the district's names */
	table(store: readonly InStore[] = []): {
		readonly table: ComputedTable<typeof unitsOrderSheet>;
		readonly problems: readonly Problem[];
	} {
		const sums = [...this.#sums.values()];
		const measuresOf = (item: string) =>
			sums.filter((sum) => sum.item === item).map(({ measure }) => measure);
		const ofSum = new Map<ItemSum, number>();
		const problems: Problem[] = [];
		for (const one of store) {
			const measures = measuresOf(one.item);
			const measure = one.measure === "" && measures.length === 1 ? measures[0] : one.measure;
			const sum = sums.find((each) => each.item === one.item && each.measure === measure);
			if (sum) ofSum.set(sum, (ofSum.get(sum) ?? 0) + one.quantity);
			else problems.push(notTakenOff(one, measures));
		}
		const rows = sums.map((sum) => rowOf(sum, ofSum.get(sum), measuresOf(sum.item)));
		return { table: { sheet: unitsOrderSheet, rows }, problems };
	}
}

function rowOf(
	sum: ItemSum,
	inStore: number | undefined,
	measures: readonly string[],
): ComputedRow<typeof unitsOrderSheet> {
	const figure = <T extends number | null>(key: keyof typeof columns, value: T): Figure<T> => ({
		...nameFigure(columns[key].label, value),
		unit: columns[key].unit,
	});
	const need = figure("need", sum.need);
	const in_store = inStore === undefined ? undefined : figure("in_store", inStore);
	const toOrder = in_store && isKnown(need) ? derive(lessStore, { need, inStore: in_store }) : need;
	const packSize = packSizeOf(sum, toOrder);
	return {
		item: nameFigure(columns.item.label, sum.item),
		measure: nameFigure(columns.measure.label, sum.measure),
		units: figure("units", sum.units),
		units_short: figure("units_short", sum.short),
		units_unknown: figure("units_unknown", sum.unknown),
		units_run_out_first: figure("units_run_out_first", sum.runOutFirst),
		usable: figure("usable", sum.usable),
		on_order: figure("on_order", sum.onOrder),
		use_expected: figure("use_expected", sum.useExpected),
		target_stock: figure("target_stock", sum.targetStock),
		need,
		in_store: in_store ?? nameFigure(columns.in_store.label, null),
		to_order: toOrder,
		pack_size: sum.packSize === undefined ? nameFigure(columns.pack_size.label, null) : packSize,
		...orderOfNeed(toOrder, packSize, sum.price),
		unit_packs: figure("unit_packs", sum.unitPacks),
		run_out_on: nameFigure(columns.run_out_on.label, sum.runOutOn),
		order_by: nameFigure(columns.order_by.label, sum.orderBy),
		remark: nameFigure(columns.remark.label, remarkOf(sum, measures)),
	};
}

/** Where no unit names a pack there is nothing to round to, unless nothing is ordered. */
function packSizeOf({ item, packSize }: ItemSum, toOrder: Figure<number | null>): Figure {
	const { label, unit } = columns.pack_size;
	if (packSize !== undefined) return { ...nameFigure(label, packSize), unit };
	const { outcome } = toOrder;
	if (outcome.ok && outcome.value === 0) return typedFigure(label, unit, 1, place);
	return refusedFigure(label, unit, place, noPackSize(place, item));
}

function remarkOf(sum: ItemSum, measures: readonly string[]): string {
	const sizes = [...sum.sizes.keys()].sort((a, b) => a - b);
	const others = measures.filter((measure) => measure !== sum.measure);
	return [
		...(sizes.length > 1 ? [severalSizes(sizes)] : []),
		...(others.length > 0
			? [say`Other units count it in ${others.join(", ")}: that is a row of its own.`]
			: []),
	].join(" ");
}

/** What the district's store has, and no row of the order to take it off. */
function notTakenOff({ item, line, measure }: InStore, measures: readonly string[]): Problem {
	const column = measures.length === 0 ? "item" : "measure";
	return advice(
		{ file: districtStockSheet.file, line, column },
		{
			code: "store-not-taken-off",
			received: column === "item" ? item : measure,
			allowed: column === "item" ? say`an item that some unit lists` : measures.join(", "),
			message:
				column === "item"
					? say`No unit lists ${item}, so what the district's store has of it is taken off nothing. Is it called otherwise there? Then add it to the table of names.`
					: say`The units count ${item} in ${measures.join(", ")}; the district's store says ${measure || "–"}, so it is taken off nothing.`,
		},
	);
}
