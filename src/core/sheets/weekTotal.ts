import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { choice } from "../values/choice.ts";
import { amount, words } from "./computedValues.ts";

export const measures = [
	"births",
	"kits_used",
	"kits_expired",
	"kits_to_reprocess",
	"rounds",
	"solution_litres",
	"chlorine",
	"boiled_litres",
	"boiled_buckets",
	"vinegar_litres",
	"gauze_pieces",
] as const;
export type Measure = (typeof measures)[number];

export const weekTotalSheet = sheet({
	file: "week-total.csv",
	title: "The whole period",
	about:
		"Totals of the plan. What to set aside comes from the total's own distribution; adding up the days would be wrong.",
	columns: {
		measure_of: computed({
			label: "Total of",
			unit: "",
			value: choice(measures),
			help: "What is added up.",
		}),
		expected: computed({
			label: "Expected",
			unit: "see unit",
			value: amount(),
			decimals: 1,
			help: "Mean of the total.",
		}),
		set_aside: computed({
			label: "Set aside",
			unit: "see unit",
			value: amount(),
			decimals: 1,
			help: "Enough for the whole period as surely as the plan asks.",
		}),
		unit: computed({
			label: "Unit",
			unit: "",
			value: words(),
			help: "Unit of both figures.",
			added: true,
		}),
	},
});
