import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { wholeAmount } from "./computedValues.ts";
import { inMeasure, mixedAmount } from "./mixedAmount.ts";
import { textColumn } from "./textColumn.ts";

export const stockSheet = sheet({
	file: "stock.csv",
	title: say`Stock by lot`,
	about: say`What is on hand of each lot after the journal's entries, and what will go to waste. The lot that expires first leaves first.`,
	columns: {
		item: textColumn({ label: say`Item`, help: say`As listed under items.` }),
		lot: textColumn({ label: say`Lot`, help: say`Number on the box or bottle.` }),
		measure: textColumn({ label: say`Measure`, coded: true, help: say`Unit of the quantities.` }),
		on_hand: mixedAmount({
			label: say`On hand`,
			unit: inMeasure,
			help: say`The lot's quantity and everything in the journal since.`,
		}),
		counted_difference: textColumn({
			label: say`Counts against books`,
			unit: inMeasure,
			signed: true,
			help: say`More (+) or less (−) than the books said, all counts added up.`,
		}),
		usable_until: textColumn({
			label: say`Usable until`,
			help: say`Expiry, or the day it becomes too weak.`,
		}),
		wasted: mixedAmount({
			label: say`Will go to waste`,
			unit: inMeasure,
			help: say`Not used by then, at average use.`,
		}),
		remark: textColumn({ label: say`Remark`, help: say`What to look out for.` }),
		last_counted: textColumn({
			label: say`Last counted`,
			help: say`By the journal, else the day it came; blank where neither is known.`,
			added: true,
		}),
		counted_days_ago: computed({
			label: say`Counted before the first day`,
			unit: say`days`,
			value: wholeAmount(),
			decimals: 0,
			help: say`How old that count is when the plan begins.`,
			added: true,
		}),
	},
});
