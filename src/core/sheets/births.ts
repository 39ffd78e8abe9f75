import { MOST_BIRTHS_PER_DAY } from "../births/settings.ts";
import { typed } from "../column.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { date } from "../values/date.ts";
import { number } from "../values/number.ts";
import { note } from "../values/text.ts";
import { optional } from "../values/valueKind.ts";

export const birthsSheet = sheet({
	file: "births.csv",
	title: "Births expected, day by day",
	about: "Your own figure for a day. A day left blank takes births a day from the settings.",
	unique: ["date"],
	columns: {
		date: typed({ label: "Date", unit: "", value: date(), help: "The day." }),
		births: typed({
			label: "Births expected",
			unit: "births",
			value: optional(number({ min: 0, max: MOST_BIRTHS_PER_DAY })),
			decimals: 1,
			help: "Mean number of births you expect that day; need not be whole.",
		}),
		note: typed({ label: "Note", unit: "", value: note(), help: "Why, if it helps." }),
	},
});

export type BirthsRow = RowOf<typeof birthsSheet>;
