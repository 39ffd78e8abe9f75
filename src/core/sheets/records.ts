import { MOST_BIRTHS_PER_DAY } from "../births/settings.ts";
import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { clockList } from "../values/clockList.ts";
import { date } from "../values/date.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";

const dailyCount = () => optional(number({ min: 0, max: MOST_BIRTHS_PER_DAY, whole: true }));

export const recordsSheet = sheet({
	file: "records.csv",
	title: say`Births and kits used, day by day`,
	about: say`What was counted, day by day. A day not recorded is missing, not zero.`,
	optional: true,
	unique: ["date"],
	columns: {
		date: typed({ label: say`Date`, unit: "", value: date(), help: say`The day.` }),
		births: typed({
			label: say`Births`,
			unit: say`births`,
			value: dailyCount(),
			help: say`Births counted that day.`,
		}),
		kits_used: typed({
			label: say`Kits used`,
			unit: say`kits`,
			value: dailyCount(),
			help: say`Kits that were used on a baby, or opened.`,
		}),
		times: typed({
			label: say`Times of births`,
			unit: say`h:min`,
			value: clockList(),
			help: say`Where they are recorded: clock times with a space between, for example 03:10 14:25.`,
			added: true,
		}),
	},
});

export type RecordsRow = RowOf<typeof recordsSheet>;
