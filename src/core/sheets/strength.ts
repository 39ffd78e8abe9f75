import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, wholeAmount, words } from "./computedValues.ts";

export const strengthSheet = sheet({
	file: "strength.csv",
	title: "Strength of every lot",
	about:
		"What each lot holds on the first day of the plan, and the last day on which it still makes the strength wanted.",
	columns: {
		product: computed({ label: "Product", unit: "", value: words(), help: "Chlorine product." }),
		lot: computed({ label: "Lot", unit: "", value: words(), help: "Number on the box or bottle." }),
		age_days: computed({
			label: "Age",
			unit: "days",
			value: wholeAmount(),
			decimals: 0,
			help: "Since it was made, or received where that is not known.",
		}),
		label_strength: computed({
			label: "On the label",
			unit: "% or g/tablet",
			value: amount(),
			decimals: 2,
			help: "When it was made.",
		}),
		strength_today: computed({
			label: "Today",
			unit: "% or g/tablet",
			value: amount(),
			decimals: 2,
			help: "Computed for the first day of the plan.",
		}),
		measured_pct: computed({
			label: "Measured",
			unit: "%",
			value: amount(),
			decimals: 2,
			help: "Latest reading; it flags and does not overrule.",
		}),
		measured_on: computed({
			label: "Measured on",
			unit: "",
			value: words(),
			help: "Day of that reading.",
		}),
		last_usable_day: computed({
			label: "Usable until",
			unit: "",
			value: words(),
			help: "The earlier of its expiry and the day it falls below the strength wanted.",
		}),
		remark: computed({ label: "Remark", unit: "", value: words(), help: "What to look out for." }),
	},
});
