import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { commonPractice } from "../source.ts";
import { number } from "../values/number.ts";

export const hoursSheet = sheet({
	file: "hours.csv",
	title: say`Births through the day`,
	about: say`How the births of a day are spread over its hours, as weights. Without it every hour is alike.`,
	optional: true,
	unique: ["hour"],
	columns: {
		hour: typed({
			label: say`Hour`,
			unit: "h",
			value: number({ min: 0, max: 23, whole: true }),
			help: say`0 is midnight to one o'clock.`,
		}),
		share: typed({
			label: say`Weight`,
			unit: "",
			value: number({ min: 0, max: 1_000_000 }),
			decimals: 2,
			help: say`Any weights: only their proportions count. Counts of births by hour will do.`,
			source: commonPractice,
		}),
	},
});

export type HoursRow = RowOf<typeof hoursSheet>;
