import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { yesNo } from "../values/choice.ts";
import { optional } from "../values/valueKind.ts";
import { inMeasure, mixedAmount } from "./mixedAmount.ts";
import { orderSheet } from "./order.ts";
import { textColumn } from "./textColumn.ts";
import { unitColumns } from "./unitColumns.ts";

const { measure, usable, on_order, use_expected, target_stock, ...ofOrder } = orderSheet.columns;

export const unitsNeedsSheet = sheet({
	file: "units-needs.csv",
	title: say`What each unit needs`,
	about: say`One row for each unit and item: what it has, what it is short of, and how many packs that is.`,
	columns: {
		...unitColumns(),
		item: textColumn({
			label: say`Item`,
			help: say`By its name in the district, where the table of names gives one.`,
		}),
		item_as_written: textColumn({ label: say`Item as written`, help: say`As the unit calls it.` }),
		measure,
		usable,
		on_order,
		use_expected,
		target_stock,
		need: mixedAmount({
			label: say`Needed`,
			unit: inMeasure,
			help: say`Target less usable less on the way; 0 where the unit has enough, blank where it is not known.`,
		}),
		pack_size: ofOrder.pack_size,
		order_packs: ofOrder.order_packs,
		order_quantity: ofOrder.order_quantity,
		cost: ofOrder.cost,
		run_out_on: ofOrder.run_out_on,
		order_by: ofOrder.order_by,
		emergency: computed({
			label: say`Runs out before an order can arrive`,
			unit: "",
			value: optional(yesNo()),
			help: say`yes: find some elsewhere today.`,
		}),
		last_counted: ofOrder.last_counted,
	},
});
