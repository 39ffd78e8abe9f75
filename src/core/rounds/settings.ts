import { typed } from "../column.ts";
import { commonPractice, estimate } from "../sources.ts";
import { choice } from "../values/choice.ts";
import { number } from "../values/number.ts";

export const roundSettings = {
	reprocessing: typed({
		label: "When kits are reprocessed",
		unit: "",
		value: choice(["in_rounds", "after_each_use"]),
		fallback: "in_rounds",
		help: "In rounds at set times, or each kit as soon as it has been used.",
		source: commonPractice,
	}),
	workers_per_round: typed({
		label: "People in a round",
		unit: "people",
		value: number({ min: 1, max: 20, whole: true }),
		fallback: 1,
		help: "Work done kit by kit is shared among them.",
		source: estimate,
	}),
};
