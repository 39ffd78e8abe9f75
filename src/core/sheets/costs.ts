import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, words } from "./computedValues.ts";

export const costsSheet = sheet({
	file: "costs.csv",
	title: "What it costs",
	about:
		"Use expected over the plan at the prices of the packs, and what a change of product or rule would save. Items without a price are left out and named.",
	columns: {
		what: computed({
			label: "What",
			unit: "",
			value: words(),
			help: "As things are, or with one change.",
		}),
		per_week: computed({
			label: "A week",
			unit: "currency",
			value: amount(),
			decimals: 2,
			help: "All items that have a price.",
		}),
		per_birth: computed({
			label: "A birth",
			unit: "currency",
			value: amount(),
			decimals: 3,
			help: "By the births expected.",
		}),
		per_kit: computed({
			label: "A kit reprocessed",
			unit: "currency",
			value: amount(),
			decimals: 3,
			help: "By the kits to reprocess expected.",
		}),
		saved_per_week: computed({
			label: "Saved a week",
			unit: "currency",
			value: words(),
			help: "Against things as they are; a minus costs more.",
		}),
		remark: computed({ label: "Remark", unit: "", value: words(), help: "What is not counted." }),
	},
});
