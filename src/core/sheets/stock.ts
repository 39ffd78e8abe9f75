import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount, wholeAmount, words } from "./computedValues.ts";

export const stockSheet = sheet({
	file: "stock.csv",
	title: say`Stock by lot`,
	about: say`What is on hand of each lot after the journal's entries, and what will go to waste. The lot that expires first leaves first.`,
	columns: {
		item: computed({
			label: say`Item`,
			unit: "",
			value: words(),
			help: say`As listed under items.`,
		}),
		lot: computed({
			label: say`Lot`,
			unit: "",
			value: words(),
			help: say`Number on the box or bottle.`,
		}),
		measure: computed({
			label: say`Measure`,
			unit: "",
			value: words(),
			coded: true,
			help: say`Unit of the quantities.`,
		}),
		on_hand: computed({
			label: say`On hand`,
			unit: say`in the item's measure`,
			value: amount(),
			decimals: 1,
			mixed: true,
			help: say`The lot's quantity and everything in the journal since.`,
		}),
		counted_difference: computed({
			label: say`Counts against books`,
			unit: say`in the item's measure`,
			value: words(),
			signed: true,
			help: say`More (+) or less (−) than the books said, all counts added up.`,
		}),
		usable_until: computed({
			label: say`Usable until`,
			unit: "",
			value: words(),
			help: say`Expiry, or the day it becomes too weak.`,
		}),
		wasted: computed({
			label: say`Will go to waste`,
			unit: say`in the item's measure`,
			value: amount(),
			decimals: 1,
			mixed: true,
			help: say`Not used by then, at average use.`,
		}),
		remark: computed({
			label: say`Remark`,
			unit: "",
			value: words(),
			help: say`What to look out for.`,
		}),
		last_counted: computed({
			label: say`Last counted`,
			unit: "",
			value: words(),
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
