import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount, day, words } from "./computedValues.ts";

export const stockAheadSheet = sheet({
	file: "stock-ahead.csv",
	title: say`Stock week by week`,
	about: say`Usable stock of each item at the end of each week ahead, at average use, against its reserve.`,
	columns: {
		item: computed({
			label: say`Item`,
			unit: "",
			value: words(),
			help: say`As listed under items.`,
		}),
		date: computed({ label: say`End of`, unit: "", value: day(), help: say`The day.` }),
		usable: computed({
			label: say`Usable`,
			unit: say`in the item's measure`,
			value: amount(),
			decimals: 1,
			mixed: true,
			help: say`What is left.`,
		}),
		reserve: computed({
			label: say`Reserve`,
			unit: say`in the item's measure`,
			value: amount(),
			decimals: 1,
			mixed: true,
			help: say`Target stock less average use: kept for busy weeks.`,
		}),
	},
});
