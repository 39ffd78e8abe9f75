import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { choice } from "../values/choice.ts";
import { date } from "../values/date.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";
import { measures } from "./planMeasures.ts";

const amount = () => optional(number({ min: 0, max: 1e12 }));

export const pastPlansSheet = sheet({
	file: "past-plans.csv",
	title: say`What was planned`,
	about: say`What the plan said of each past day, written when it moved on, so that it can be compared with what was done.`,
	optional: true,
	unique: ["date", "measure_of"],
	columns: {
		date: typed({ label: say`Date`, unit: "", value: date(), help: say`The day.` }),
		measure_of: typed({
			label: say`Of`,
			unit: "",
			value: choice(measures),
			help: say`What was planned.`,
		}),
		expected: typed({
			label: say`Average`,
			unit: say`in the measure's unit`,
			value: amount(),
			decimals: 1,
			help: say`Mean.`,
		}),
		set_aside: typed({
			label: say`Prepare for`,
			unit: say`in the measure's unit`,
			value: amount(),
			decimals: 1,
			help: say`What was to be at hand.`,
		}),
	},
});

export type PastPlansRow = RowOf<typeof pastPlansSheet>;
