import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { day } from "./computedValues.ts";
import { inMeasure, mixedAmount } from "./mixedAmount.ts";
import { textColumn } from "./textColumn.ts";

export const stockAheadSheet = sheet({
	file: "stock-ahead.csv",
	title: say`Stock week by week`,
	about: say`Usable stock of each item at the end of each week ahead, at average use, wastage included, against its reserve.`,
	columns: {
		item: textColumn({ label: say`Item`, help: say`As listed under items.` }),
		date: computed({ label: say`End of`, unit: "", value: day(), help: say`The day.` }),
		usable: mixedAmount({ label: say`Usable`, unit: inMeasure, help: say`What is left.` }),
		reserve: mixedAmount({
			label: say`Reserve`,
			unit: inMeasure,
			help: say`Target stock less average use, wastage in both: kept for busy weeks.`,
		}),
	},
});
