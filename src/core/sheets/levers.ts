import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, wholeAmount, words } from "./computedValues.ts";

export const leversSheet = sheet({
	file: "levers.csv",
	title: "What would help",
	about:
		"The plan as it is beside one change at a time, the change that spares most unmet needs first.",
	columns: {
		kind: computed({
			label: "Kind",
			unit: "",
			value: words(),
			help: "Blank where all kits are alike.",
		}),
		change: computed({
			label: "Change",
			unit: "",
			value: words(),
			help: "What would be different.",
		}),
		kits: computed({
			label: "Kits in service",
			unit: "kits",
			value: wholeAmount(),
			decimals: 0,
			help: "With the change.",
		}),
		turnaround_minutes: computed({
			label: "Until kits are ready",
			unit: "min",
			value: amount(),
			decimals: 0,
			help: "From the start of a round.",
		}),
		unmet_per_1000_uses: computed({
			label: "Needs that find none ready",
			unit: "per 1,000 uses",
			value: amount(),
			decimals: 3,
			help: "With the kits in service.",
		}),
		avoided_per_1000_uses: computed({
			label: "Avoided",
			unit: "per 1,000 uses",
			value: amount(),
			decimals: 3,
			help: "Fewer than now; blank where it would be worse.",
		}),
		kits_needed: computed({
			label: "Kits needed",
			unit: "kits",
			value: wholeAmount(),
			decimals: 0,
			help: "With the change.",
		}),
	},
});
