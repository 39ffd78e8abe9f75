import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { choice } from "../values/choice.ts";
import { optional } from "../values/valueKind.ts";
import { amount, day, wholeAmount } from "./computedValues.ts";
import { dayPlanSheet } from "./dayPlan.ts";
import { textColumn } from "./textColumn.ts";
import { unitColumns } from "./unitColumns.ts";

/** How a unit stands, the worst first. */
export const unitStates = ["not_read", "not_planned", "look", "in_order"] as const;

export type UnitState = (typeof unitStates)[number];

export const unitsSheet = sheet({
	file: "units.csv",
	title: say`Units of the district`,
	about: say`One row for each unit, also for one that could not be read: then the last column says why.`,
	columns: {
		...unitColumns(),
		first_day: computed({
			label: say`First day`,
			unit: "",
			value: optional(day()),
			help: say`First day of the unit's plan; units may plan for different weeks.`,
		}),
		days: computed({
			label: say`Days`,
			unit: say`days`,
			value: wholeAmount(),
			decimals: 0,
			help: say`Days of the unit's plan.`,
		}),
		births_expected: computed({
			label: say`Births, average`,
			unit: say`births`,
			value: amount(),
			decimals: 1,
			help: say`Over the days of the plan.`,
		}),
		kits_needed: dayPlanSheet.columns.kits_needed,
		kits_in_service: dayPlanSheet.columns.kits_in_service,
		unmet_per_1000_uses: computed({
			label: say`Times no kit is ready when needed`,
			unit: say`per 1\u202f000 uses`,
			value: amount(),
			decimals: 3,
			rounds: "up",
			help: say`With the kits in service; of several kinds of kit the worst.`,
		}),
		problems: computed({
			label: say`Problems`,
			unit: say`problems`,
			value: wholeAmount(),
			decimals: 0,
			help: say`For which some number cannot be given.`,
		}),
		advice: computed({
			label: say`Advice`,
			unit: say`remarks`,
			value: wholeAmount(),
			decimals: 0,
			help: say`The numbers stand, but look here.`,
		}),
		first_run_out: computed({
			label: say`First runs out on`,
			unit: "",
			value: optional(day()),
			help: say`First day on which an item of the store runs out; blank: none within the days looked at.`,
		}),
		first_run_out_item: textColumn({
			label: say`First to run out`,
			help: say`The item that runs out on that day.`,
		}),
		orders_late: computed({
			label: say`Orders late`,
			unit: say`items`,
			value: wholeAmount(),
			decimals: 0,
			help: say`Items whose last day to order is past, or which run out before an order can arrive.`,
		}),
		last_counted: computed({
			label: say`Counted longest ago`,
			unit: "",
			value: optional(day()),
			help: say`Day on which the item counted longest ago was counted.`,
		}),
		state: computed({
			label: say`State`,
			unit: "",
			value: choice(unitStates),
			help: say`Not read: nothing of it counts. Not planned: some number has no answer. Look: the numbers stand, but something must be done. In order: nothing to be done.`,
		}),
		in_words: textColumn({
			label: say`In words`,
			help: say`What to do first, or why the unit could not be read.`,
		}),
	},
});
