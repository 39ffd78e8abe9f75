import { typed } from "../column.ts";
import { say } from "../say.ts";
import { commonPractice, estimate, ownRule } from "../source.ts";
import { sources } from "../sources.ts";
import { choice, yesNo } from "../values/choice.ts";
import { number } from "../values/number.ts";

export const kitSettings = {
	kits_used_per_100_births: typed({
		label: say`Kits used per 100 births`,
		unit: say`kits/100 births`,
		value: number({ min: 0, max: 100 }),
		fallback: 10,
		decimals: 1,
		help: say`10 lies between two published shares, 4.4 ventilated and 16.2 stimulated of 100 newborns. Enter 100 where every kit laid out for a birth is reprocessed, used or not.`,
		source: sources.kitShare,
	}),
	kit_share_from_register: typed({
		label: say`Learn kits used from the register`,
		unit: "",
		value: yesNo(),
		fallback: "no",
		help: say`yes: start from the figure above and learn from the days on which births and kits used are both recorded.`,
		added: true,
	}),
	kit_share_prior_births: typed({
		label: say`Births the starting share counts for`,
		unit: say`births`,
		value: number({ min: 0, max: 100_000 }),
		fallback: 100,
		help: say`The figure above weighs as much as this many recorded births.`,
		source: estimate,
		added: true,
	}),
	delivery_beds: typed({
		label: say`Delivery beds`,
		unit: say`beds`,
		value: number({ min: 0, max: 100, whole: true }),
		fallback: 2,
		help: say`One ready kit is kept for each.`,
		source: commonPractice,
	}),
	spare_kits: typed({
		label: say`Spare kits`,
		unit: say`kits`,
		value: number({ min: 0, max: 100, whole: true }),
		fallback: 1,
		help: say`Kept on top of one for each delivery bed.`,
		source: commonPractice,
	}),
	unmet_per_1000_uses: typed({
		label: say`Times no kit may be ready when needed, at most`,
		unit: say`per 1\u202f000 uses`,
		value: number({ min: 0.001, max: 500 }),
		fallback: 1,
		decimals: 2,
		help: say`The times that the unit is prepared to accept; fewer ask for more kits. The default, 1 of 1\u202f000, is a rule of this program.`,
		source: ownRule,
	}),
	ready_life_days: typed({
		label: say`Days a disinfected kit stays ready`,
		unit: say`days`,
		value: number({ min: 0.25, max: 90 }),
		fallback: 7,
		decimals: 0,
		help: say`Covered, dry, in a disinfected container. After that it goes through a round again.`,
		source: sources.readyLife,
	}),
	renew_kits: typed({
		label: say`When unused kits are renewed`,
		unit: "",
		value: choice(["in_time", "when_expired"]),
		fallback: "in_time",
		help: say`In time: a kit joins the last round from which it comes back before its last day ends, and kits that end together are spread. When out of date: it joins the first round after its last day, and is missing until then.`,
		source: commonPractice,
		added: true,
	}),
};
