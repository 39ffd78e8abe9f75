import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { commonPractice } from "../source.ts";

interface Inputs {
	/** null where nothing says when it was counted. */
	readonly daysAgo: number | null;
	readonly everyDays: number;
	readonly isUsedUp: "yes" | "no";
}

/** How long ago the stock of an item was counted, where that is too long; null where it is not. */
export const daysTooLong = calculation<Inputs, number | null>({
	key: "counted_too_long_ago",
	label: say`Last counted too long ago`,
	unit: say`days`,
	formula: say`Days since the lot of it was counted that was counted longest ago, where they are more than the days between counts and the plan uses the item up; else none.`,
	source: commonPractice,
	inputs: {
		daysAgo: { label: say`Counted so many days ago`, unit: say`days` },
		everyDays: { label: say`Days between counts`, unit: say`days`, min: 1 },
		isUsedUp: { label: say`The plan uses it up`, unit: "" },
	},
	example: {
		inputs: { daysAgo: 32, everyDays: 31, isUsedUp: "yes" },
		result: 32,
		within: 0,
	},
	compute: ({ daysAgo, everyDays, isUsedUp }) =>
		daysAgo !== null && daysAgo > everyDays && isUsedUp === "yes" ? daysAgo : null,
});
