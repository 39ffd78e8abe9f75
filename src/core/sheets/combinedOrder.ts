import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount, wholeAmount } from "./computedValues.ts";
import { inMeasure, mixedAmount } from "./mixedAmount.ts";
import { textColumn } from "./textColumn.ts";

export const combinedOrderSheet = sheet({
	file: "combined-order.csv",
	title: say`Several units' orders as one`,
	about: say`Packs come from the summed need of the units that need the item; a unit with more than enough does not lend to the others.`,
	columns: {
		item: textColumn({ label: say`Item`, help: say`As the units call it.` }),
		measure: textColumn({ label: say`Measure`, coded: true, help: say`Unit of the quantities.` }),
		usable: mixedAmount({ label: say`Usable`, unit: inMeasure, help: say`In all units.` }),
		on_order: mixedAmount({ label: say`On the way`, unit: inMeasure, help: say`In all units.` }),
		use_expected: mixedAmount({
			label: say`Use, average`,
			unit: inMeasure,
			help: say`In all units.`,
		}),
		target_stock: mixedAmount({
			label: say`Target stock`,
			unit: inMeasure,
			help: say`In all units.`,
		}),
		need: mixedAmount({
			label: say`Needed`,
			unit: inMeasure,
			help: say`Target less usable less on the way, of the units that are short.`,
		}),
		order_packs: computed({
			label: say`Order`,
			unit: say`packs`,
			value: wholeAmount(),
			decimals: 0,
			help: say`Whole packs for the summed need.`,
		}),
		order_quantity: mixedAmount({
			label: say`That is`,
			unit: inMeasure,
			help: say`Packs × pack size.`,
		}),
		cost: computed({
			label: say`Cost`,
			unit: say`currency`,
			value: amount(),
			decimals: 2,
			help: say`Blank where no unit gives a price.`,
		}),
		run_out_on: textColumn({
			label: say`First runs out on`,
			help: say`The earliest of the units.`,
		}),
		order_by: textColumn({ label: say`Order by`, help: say`The earliest of the units.` }),
		units: computed({
			label: say`Units`,
			unit: say`units`,
			value: wholeAmount(),
			decimals: 0,
			help: say`How many units list it.`,
		}),
		split: textColumn({ label: say`Split`, unit: inMeasure, help: say`What each unit needs.` }),
		remark: textColumn({ label: say`Remark`, help: say`What to look out for.` }),
	},
});
