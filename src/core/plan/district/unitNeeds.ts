import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import type { ComputedRow } from "../../computedTable.ts";
import { valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import { orderSheet } from "../../sheets/order.ts";
import { unitsNeedsSheet } from "../../sheets/unitsNeeds.ts";
import { commonPractice } from "../../source.ts";
import type { Plan } from "../plan.ts";
import { rowsOf } from "../rowsOf.ts";
import type { Whose } from "./unitLine.ts";

const { columns } = unitsNeedsSheet;
const inMeasure = say`in the item's measure`;

export const shortOf = calculation<{ target: number; usable: number; onOrder: number }, number>({
	key: "unit_need",
	label: columns.need.label,
	unit: inMeasure,
	formula: say`Target stock − usable − on the way; 0 where the unit has enough.`,
	source: commonPractice,
	inputs: {
		target: { label: columns.target_stock.label, unit: inMeasure, min: 0 },
		usable: { label: columns.usable.label, unit: inMeasure, min: 0 },
		onOrder: { label: columns.on_order.label, unit: inMeasure, min: 0 },
	},
	example: { inputs: { target: 400, usable: 150, onOrder: 50 }, result: 200, within: 0 },
	compute: ({ target, usable, onOrder }) => Math.max(0, target - usable - onOrder),
});

/** What a unit needs of each item of its store, by the district's name of the item. */
export function unitNeeds(
	{ unit, path }: Whose,
	plan: Plan,
	nameOf: (item: string) => string = (item) => item,
): ComputedRow<typeof unitsNeedsSheet>[] {
	return rowsOf(plan, orderSheet).map((row) => {
		const written = valueIn(row.item) as string;
		return {
			unit: nameFigure(columns.unit.label, unit),
			path: nameFigure(columns.path.label, path),
			item: nameFigure(columns.item.label, nameOf(written)),
			item_as_written: nameFigure(columns.item_as_written.label, written),
			measure: row.measure,
			usable: row.usable,
			on_order: row.on_order,
			use_expected: row.use_expected,
			target_stock: row.target_stock,
			need: derive(shortOf, {
				target: row.target_stock as Figure,
				usable: row.usable as Figure,
				onOrder: row.on_order as Figure,
			}),
			pack_size: row.pack_size,
			order_packs: row.order_packs,
			order_quantity: row.order_quantity,
			cost: row.cost,
			run_out_on: row.run_out_on,
			order_by: row.order_by,
			emergency: row.emergency,
			last_counted: row.last_counted,
		};
	});
}
