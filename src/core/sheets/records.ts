import { MOST_BIRTHS_PER_DAY } from "../births/settings.ts";
import { typed } from "../column.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { date } from "../values/date.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";

const dailyCount = () => optional(number({ min: 0, max: MOST_BIRTHS_PER_DAY, whole: true }));

export const recordsSheet = sheet({
	file: "records.csv",
	title: "From the register",
	about: "What was counted, day by day. A day not recorded is missing, not zero.",
	optional: true,
	unique: ["date"],
	columns: {
		date: typed({ label: "Date", unit: "", value: date(), help: "The day." }),
		births: typed({
			label: "Births",
			unit: "births",
			value: dailyCount(),
			help: "Births counted that day.",
		}),
		kits_used: typed({
			label: "Kits used",
			unit: "kits",
			value: dailyCount(),
			help: "Kits that were used on a baby, or opened.",
		}),
	},
});

export type RecordsRow = RowOf<typeof recordsSheet>;
