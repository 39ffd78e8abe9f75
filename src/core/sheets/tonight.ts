import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { day, words } from "./computedValues.ts";

export const tonightSheet = sheet({
	file: "tonight.csv",
	title: say`Start tonight`,
	about: say`Every fire under the day and hour at which it is lit, often the evening before its round.`,
	columns: {
		date: computed({
			label: say`Date`,
			unit: "",
			value: day(),
			help: say`The day on which it is done.`,
		}),
		by: computed({
			label: say`By`,
			unit: say`h:min`,
			value: words(),
			help: say`Latest clock time.`,
		}),
		task: computed({ label: say`What`, unit: "", value: words(), help: say`What to start.` }),
		for_round: computed({
			label: say`For`,
			unit: "",
			value: words(),
			help: say`The round, with its day.`,
		}),
	},
});
