import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { combinedOrderSheet } from "./combinedOrder.ts";
import { wholeAmount } from "./computedValues.ts";
import { inMeasure, mixedAmount } from "./mixedAmount.ts";

const { item, measure, usable, on_order, use_expected, target_stock, need, ...ofAll } =
	combinedOrderSheet.columns;

const unitCount = (label: string, help: string) =>
	computed({ label, unit: say`units`, value: wholeAmount(), decimals: 0, help });

export const unitsOrderSheet = sheet({
	file: "units-order.csv",
	title: say`The district's order`,
	about: say`All units' needs added up, less what the district's own store has. A unit with more than enough does not lend to the others. What each unit needs stands on a sheet of its own.`,
	columns: {
		item,
		measure,
		units: ofAll.units,
		units_short: unitCount(say`Units short`, say`How many of them need some.`),
		units_unknown: unitCount(
			say`Units not known`,
			say`They gave no stock or target, so nothing of theirs is in the sum.`,
		),
		units_run_out_first: unitCount(
			say`Units that run out first`,
			say`They run out before an order can arrive: find some elsewhere today.`,
		),
		usable,
		on_order,
		use_expected,
		target_stock,
		need,
		in_store: mixedAmount({
			label: say`In the district's store`,
			unit: inMeasure,
			help: say`As the list of the district's own stock says; blank where it does not name the item.`,
		}),
		to_order: mixedAmount({
			label: say`To order`,
			unit: inMeasure,
			help: say`Needed, less what is in the district's store.`,
		}),
		pack_size: mixedAmount({
			label: say`Pack size`,
			unit: inMeasure,
			help: say`The largest that a unit names.`,
		}),
		order_packs: ofAll.order_packs,
		order_quantity: ofAll.order_quantity,
		cost: ofAll.cost,
		unit_packs: computed({
			label: say`Packs, unit by unit`,
			unit: say`packs`,
			value: wholeAmount(),
			decimals: 0,
			help: say`The units' own whole packs added up: so many are opened if every unit gets whole packs of its own.`,
		}),
		run_out_on: ofAll.run_out_on,
		order_by: ofAll.order_by,
		remark: ofAll.remark,
	},
});
