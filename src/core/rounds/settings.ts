import { typed } from "../column.ts";
import { say } from "../say.ts";
import { commonPractice, estimate } from "../sources.ts";
import { choice } from "../values/choice.ts";
import { number } from "../values/number.ts";

export const roundSettings = {
	reprocessing: typed({
		label: say`When kits are reprocessed`,
		unit: "",
		value: choice(["in_rounds", "after_each_use"]),
		fallback: "in_rounds",
		help: say`In rounds at set times, or each kit as soon as it has been used.`,
		source: commonPractice,
	}),
	workers_per_round: typed({
		label: say`People in a round`,
		unit: say`people`,
		value: number({ min: 1, max: 20, whole: true }),
		fallback: 1,
		help: say`Work done kit by kit is shared among them.`,
		source: estimate,
	}),
};
