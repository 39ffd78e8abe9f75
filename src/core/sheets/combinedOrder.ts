import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, wholeAmount, words } from "./computedValues.ts";

const inMeasure = "in the item's measure";

export const combinedOrderSheet = sheet({
	file: "combined-order.csv",
	title: "Several units' orders as one",
	about:
		"Packs come from the summed need of the units that need the item; a unit with more than enough does not lend to the others.",
	columns: {
		item: computed({ label: "Item", unit: "", value: words(), help: "As the units call it." }),
		measure: computed({
			label: "Measure",
			unit: "",
			value: words(),
			help: "Unit of the quantities.",
		}),
		usable: computed({
			label: "Usable",
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			help: "In all units.",
		}),
		on_order: computed({
			label: "On order",
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			help: "In all units.",
		}),
		use_expected: computed({
			label: "Use, expected",
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			help: "In all units.",
		}),
		target_stock: computed({
			label: "Target stock",
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			help: "In all units.",
		}),
		need: computed({
			label: "Needed",
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			help: "Target less usable less on order, of the units that are short.",
		}),
		order_packs: computed({
			label: "Order",
			unit: "packs",
			value: wholeAmount(),
			decimals: 0,
			help: "Whole packs for the summed need.",
		}),
		order_quantity: computed({
			label: "That is",
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			help: "Packs × pack size.",
		}),
		cost: computed({
			label: "Cost",
			unit: "currency",
			value: amount(),
			decimals: 2,
			help: "Blank where no unit gives a price.",
		}),
		run_out_on: computed({
			label: "First runs out on",
			unit: "",
			value: words(),
			help: "The earliest of the units.",
		}),
		order_by: computed({
			label: "Order by",
			unit: "",
			value: words(),
			help: "The earliest of the units.",
		}),
		units: computed({
			label: "Units",
			unit: "units",
			value: wholeAmount(),
			decimals: 0,
			help: "How many units list it.",
		}),
		split: computed({
			label: "Split",
			unit: inMeasure,
			value: words(),
			help: "What each unit needs.",
		}),
		remark: computed({ label: "Remark", unit: "", value: words(), help: "What to look out for." }),
	},
});
