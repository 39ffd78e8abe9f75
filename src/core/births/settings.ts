import { typed } from "../column.ts";
import { say } from "../say.ts";
import { commonPractice, definition, estimate } from "../source.ts";
import { choice, yesNo } from "../values/choice.ts";
import { date } from "../values/date.ts";
import { name } from "../values/name.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";

/** Most births a day that any single unit reports; larger figures are typing slips. */
export const MOST_BIRTHS_PER_DAY = 500;

/** Whose questions come first. */
export const roles = ["manager", "bench", "store"] as const;
export type Role = (typeof roles)[number];

export const planSettings = {
	unit_name: typed({
		label: say`Name of the unit`,
		unit: "",
		value: name(),
		fallback: say`Unnamed unit`,
		help: say`Printed on every sheet and label.`,
	}),
	role: typed({
		label: say`Who works with this copy`,
		unit: "",
		value: choice(roles),
		fallback: "manager",
		help: say`Only decides which questions come first; every sheet stays where anyone finds it.`,
		added: true,
	}),
	plan_start: typed({
		label: say`First day of the plan`,
		unit: "",
		value: date(),
		help: say`The plan runs from this day on.`,
	}),
	plan_days: typed({
		label: say`Days in the plan`,
		unit: say`days`,
		value: number({ min: 1, max: 366, whole: true }),
		fallback: 7,
		help: say`Seven for a week.`,
	}),
	plan_confidence: typed({
		label: say`How sure the plan should be`,
		unit: say`share`,
		value: number({ min: 0.5, max: 0.9999, as: "share" }),
		fallback: 0.95,
		decimals: 2,
		help: say`0.95: what the plan prepares for is enough on at least 95 of 100 such days, or in 95 of 100 such weeks.`,
		source: definition,
	}),
	births_from_register: typed({
		label: say`Forecast births from the register`,
		unit: "",
		value: yesNo(),
		fallback: "yes",
		help: say`yes: days without a figure of their own take the forecast; no: they take births a day.`,
		added: true,
	}),
	births_per_day: typed({
		label: say`Births a day`,
		unit: say`births/day`,
		value: number({ min: 0, max: MOST_BIRTHS_PER_DAY }),
		decimals: 1,
		help: say`Mean births a day, used for every day without a figure of its own.`,
		source: commonPractice,
	}),
	prior_days: typed({
		label: say`Days of the register that births a day count for`,
		unit: say`days`,
		value: number({ min: 1, max: 366 }),
		fallback: 7,
		help: say`Until the register has 14 recorded days and 10 births, births a day weigh as much as this many recorded days.`,
		source: estimate,
		added: true,
	}),
	register_from: typed({
		label: say`Learn births from`,
		unit: "",
		value: optional(date()),
		fallback: null,
		help: say`Blank: from the first recorded day. Only after a change that lasts and whose cause you know: days before it teach the forecast nothing any more, and it is less sure until the new ones are many. By chance alone 19 to 36 of 100 units look changed within two years.`,
		source: estimate,
		added: true,
	}),
};
