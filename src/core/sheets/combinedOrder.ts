import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount, wholeAmount, words } from "./computedValues.ts";

const inMeasure = say`in the item's measure`;

export const combinedOrderSheet = sheet({
	file: "combined-order.csv",
	title: say`Several units' orders as one`,
	about: say`Packs come from the summed need of the units that need the item; a unit with more than enough does not lend to the others.`,
	columns: {
		item: computed({
			label: say`Item`,
			unit: "",
			value: words(),
			help: say`As the units call it.`,
		}),
		measure: computed({
			label: say`Measure`,
			unit: "",
			value: words(),
			coded: true,
			help: say`Unit of the quantities.`,
		}),
		usable: computed({
			label: say`Usable`,
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			mixed: true,
			help: say`In all units.`,
		}),
		on_order: computed({
			label: say`On the way`,
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			mixed: true,
			help: say`In all units.`,
		}),
		use_expected: computed({
			label: say`Use, average`,
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			mixed: true,
			help: say`In all units.`,
		}),
		target_stock: computed({
			label: say`Target stock`,
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			mixed: true,
			help: say`In all units.`,
		}),
		need: computed({
			label: say`Needed`,
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			mixed: true,
			help: say`Target less usable less on the way, of the units that are short.`,
		}),
		order_packs: computed({
			label: say`Order`,
			unit: say`packs`,
			value: wholeAmount(),
			decimals: 0,
			help: say`Whole packs for the summed need.`,
		}),
		order_quantity: computed({
			label: say`That is`,
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			mixed: true,
			help: say`Packs × pack size.`,
		}),
		cost: computed({
			label: say`Cost`,
			unit: say`currency`,
			value: amount(),
			decimals: 2,
			help: say`Blank where no unit gives a price.`,
		}),
		run_out_on: computed({
			label: say`First runs out on`,
			unit: "",
			value: words(),
			help: say`The earliest of the units.`,
		}),
		order_by: computed({
			label: say`Order by`,
			unit: "",
			value: words(),
			help: say`The earliest of the units.`,
		}),
		units: computed({
			label: say`Units`,
			unit: say`units`,
			value: wholeAmount(),
			decimals: 0,
			help: say`How many units list it.`,
		}),
		split: computed({
			label: say`Split`,
			unit: inMeasure,
			value: words(),
			help: say`What each unit needs.`,
		}),
		remark: computed({
			label: say`Remark`,
			unit: "",
			value: words(),
			help: say`What to look out for.`,
		}),
	},
});
