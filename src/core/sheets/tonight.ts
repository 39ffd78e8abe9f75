import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { day } from "./computedValues.ts";
import { textColumn } from "./textColumn.ts";

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
		by: textColumn({ label: say`By`, unit: say`h:min`, help: say`Latest clock time.` }),
		task: textColumn({ label: say`What`, help: say`What to start.` }),
		for_round: textColumn({ label: say`For`, help: say`The round, with its day.` }),
	},
});
