import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { stopped } from "../stock/stopsWithout.ts";
import { choice, yesNo } from "../values/choice.ts";
import { optional } from "../values/valueKind.ts";
import { amount, wholeAmount } from "./computedValues.ts";
import { textColumn } from "./textColumn.ts";

export const takeFirstSheet = sheet({
	file: "take-first.csv",
	title: say`What to take first`,
	about: say`The packs of the order, one after the other: first what no safe round can do without, the item that runs out soonest first; then what a round can do without. With money for this order, how far it goes.`,
	columns: {
		place: computed({
			label: say`Place`,
			unit: "",
			value: wholeAmount(),
			decimals: 0,
			help: say`1 is what to take first.`,
		}),
		item: textColumn({ label: say`Item`, help: say`As listed under items.` }),
		packs: computed({
			label: say`Packs`,
			unit: say`packs`,
			value: wholeAmount(),
			decimals: 0,
			help: say`Of this item before the next one comes first.`,
		}),
		cost: computed({
			label: say`Cost`,
			unit: say`currency`,
			value: optional(amount()),
			decimals: 2,
			help: say`Blank where the price is not known.`,
		}),
		taken: computed({
			label: say`Paid for`,
			unit: "",
			value: yesNo(),
			help: say`no: the money for this order does not pay for it.`,
		}),
		spent: computed({
			label: say`Spent so far`,
			unit: say`currency`,
			value: optional(amount()),
			decimals: 2,
			help: say`With all that is paid for up to here.`,
		}),
		out_without: textColumn({
			label: say`Runs out without it on`,
			help: say`From the delivery of an order of today on, at average use; blank: not within the days looked at.`,
		}),
		stops: computed({
			label: say`What stops without it`,
			unit: "",
			value: choice(stopped),
			help: say`Disinfection, every safe round or descaling; or nothing: rounds go on, poorer.`,
		}),
	},
});
