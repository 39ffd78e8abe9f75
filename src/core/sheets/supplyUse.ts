import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, words } from "./computedValues.ts";

export const supplyUseSheet = sheet({
	file: "supply-use.csv",
	title: "What the plan uses up",
	about: "Each item over the whole period of the plan.",
	columns: {
		item: computed({ label: "Item", unit: "", value: words(), help: "As listed under items." }),
		measure: computed({
			label: "Measure",
			unit: "",
			value: words(),
			help: "Unit of both figures.",
		}),
		expected: computed({
			label: "Expected",
			unit: "in the item's measure",
			value: amount(),
			decimals: 1,
			help: "Mean use.",
		}),
		set_aside: computed({
			label: "Set aside",
			unit: "in the item's measure",
			value: amount(),
			decimals: 1,
			help: "Enough as surely as the plan asks.",
		}),
	},
});
