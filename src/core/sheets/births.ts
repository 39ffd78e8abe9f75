import { MOST_BIRTHS_PER_DAY } from "../births/settings.ts";
import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { date } from "../values/date.ts";
import { note } from "../values/note.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";

export const birthsSheet = sheet({
	file: "births.csv",
	title: say`Your own figures of births`,
	about: say`Your own figure for a day. A day left blank takes the forecast, or births a day from the settings.`,
	unique: ["date"],
	columns: {
		date: typed({ label: say`Date`, unit: "", value: date(), help: say`The day.` }),
		births: typed({
			label: say`Births`,
			unit: say`births`,
			value: optional(number({ min: 0, max: MOST_BIRTHS_PER_DAY })),
			decimals: 1,
			help: say`The average number of births you count on for that day; need not be whole.`,
		}),
		note: typed({ label: say`Note`, unit: "", value: note(), help: say`Why, if it helps.` }),
	},
});

export type BirthsRow = RowOf<typeof birthsSheet>;
