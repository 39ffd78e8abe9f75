import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { day, words } from "./computedValues.ts";

export const tonightSheet = sheet({
	file: "tonight.csv",
	title: "The night before",
	about: "What must be started on a day for the next day's rounds.",
	columns: {
		date: computed({ label: "Date", unit: "", value: day(), help: "The day on which it is done." }),
		by: computed({ label: "By", unit: "h:min", value: words(), help: "Latest clock time." }),
		task: computed({ label: "What", unit: "", value: words(), help: "What to start." }),
		for_round: computed({ label: "For", unit: "", value: words(), help: "Round of the next day." }),
	},
});
