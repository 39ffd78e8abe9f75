import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { yesNo } from "../values/choice.ts";
import { optional } from "../values/valueKind.ts";
import { amount, words } from "./computedValues.ts";
import { orderSheet } from "./order.ts";
import { unitColumns } from "./unitColumns.ts";

const inMeasure = say`in the item's measure`;
const { measure, usable, on_order, use_expected, target_stock, ...ofOrder } = orderSheet.columns;

export const unitsNeedsSheet = sheet({
	file: "units-needs.csv",
	title: say`What each unit needs`,
	about: say`One row for each unit and item: what it has, what it is short of, and how many packs that is.`,
	columns: {
		...unitColumns(),
		item: computed({
			label: say`Item`,
			unit: "",
			value: words(),
			help: say`By its name in the district, where the table of names gives one.`,
		}),
		item_as_written: computed({
			label: say`Item as written`,
			unit: "",
			value: words(),
			help: say`As the unit calls it.`,
		}),
		measure,
		usable,
		on_order,
		use_expected,
		target_stock,
		need: computed({
			label: say`Needed`,
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			mixed: true,
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
