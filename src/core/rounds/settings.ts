import { typed } from "../column.ts";
import { say } from "../say.ts";
import { commonPractice, estimate } from "../source.ts";
import { choice, yesNo } from "../values/choice.ts";
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
	soak_alone: typed({
		label: say`A kit in the soak is left alone`,
		unit: "",
		value: yesNo(),
		fallback: "no",
		help: say`After each use only. no: a person stays with a kit from beginning to end. yes: in steps in which nobody is busy, that person can take up another kit.`,
		source: commonPractice,
		added: true,
	}),
	worker_hours_a_day: typed({
		label: say`Hours a day someone can work on kits`,
		unit: "h",
		value: number({ min: 0.5, max: 24 }),
		fallback: 24,
		help: say`After each use only: for each of the people, day and night together.`,
		source: estimate,
		added: true,
	}),
};
