import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { stopped } from "../stock/stopsWithout.ts";
import { choice, yesNo } from "../values/choice.ts";
import { optional } from "../values/valueKind.ts";
import { amount, wholeAmount } from "./computedValues.ts";
import { inMeasure, mixedAmount } from "./mixedAmount.ts";
import { textColumn } from "./textColumn.ts";

export const orderSheet = sheet({
	file: "order.csv",
	title: say`What to order`,
	about: say`For each item: what is there, what will be used until the next order has come in, and how many packs to order now.`,
	columns: {
		item: textColumn({ label: say`Item`, help: say`As listed under items.` }),
		measure: textColumn({ label: say`Measure`, coded: true, help: say`Unit of the quantities.` }),
		usable: mixedAmount({
			label: say`Usable`,
			unit: inMeasure,
			help: say`In the store, in date, strong enough, and used before it goes out of date.`,
		}),
		on_order: mixedAmount({
			label: say`On the way`,
			unit: inMeasure,
			help: say`Lots that arrive before the next order comes in, and are used before they go out of date.`,
		}),
		use_expected: mixedAmount({
			label: say`Use, average`,
			unit: inMeasure,
			help: say`Over delivery days and days between orders, without wastage.`,
		}),
		target_stock: mixedAmount({
			label: say`Target stock`,
			unit: inMeasure,
			help: say`Lasts that long as surely as the item is to last, wastage included.`,
		}),
		order_packs: computed({
			label: say`Order`,
			unit: say`packs`,
			value: wholeAmount(),
			decimals: 0,
			help: say`Whole packs.`,
		}),
		order_quantity: mixedAmount({
			label: say`That is`,
			unit: inMeasure,
			help: say`Packs × pack size.`,
		}),
		cost: computed({
			label: say`Cost`,
			unit: say`currency`,
			value: amount(),
			decimals: 2,
			help: say`Blank where the price is not known.`,
		}),
		run_out_on: textColumn({
			label: say`Runs out on`,
			help: say`First day whose average use, wastage included, is not covered; blank: not within the days looked at.`,
		}),
		order_by: textColumn({
			label: say`Order by`,
			help: say`So that the delivery comes before the reserve is touched.`,
		}),
		months_of_stock: computed({
			label: say`Months of stock`,
			unit: say`months`,
			value: amount(),
			decimals: 1,
			help: say`Usable stock at the mean use, wastage included.`,
		}),
		remark: textColumn({ label: say`Remark`, help: say`What to look out for.` }),
		emergency: computed({
			label: say`Runs out before an order can arrive`,
			unit: "",
			value: optional(yesNo()),
			help: say`yes: find some elsewhere today.`,
			added: true,
		}),
		pack_size: mixedAmount({
			label: say`Pack size`,
			unit: inMeasure,
			help: say`How much is in one pack.`,
			added: true,
		}),
		pack_price: computed({
			label: say`Price of a pack`,
			unit: say`currency`,
			value: amount(),
			decimals: 2,
			help: say`Blank where it is not known.`,
			added: true,
		}),
		unit_name: textColumn({
			label: say`Unit`,
			help: say`So that several units' orders can be told apart.`,
			added: true,
		}),
		last_counted: textColumn({
			label: say`Last counted`,
			help: say`Of its lots, the one counted longest ago; blank where nothing says when.`,
			added: true,
		}),
		take_packs: computed({
			label: say`Take`,
			unit: say`packs`,
			value: optional(wholeAmount()),
			decimals: 0,
			help: say`Of the packs ordered, those that the money for this order pays for and the depot sends.`,
			added: true,
		}),
		take_cost: computed({
			label: say`What is taken costs`,
			unit: say`currency`,
			value: optional(amount()),
			decimals: 2,
			help: say`Blank where the price is not known.`,
			added: true,
		}),
		take_run_out_on: textColumn({
			label: say`Then runs out on`,
			help: say`With what is taken: the first day, from its delivery on, whose average use is not covered; blank: not within the days looked at.`,
			added: true,
		}),
		full_run_out_on: textColumn({
			label: say`With the whole order on`,
			help: say`The same with every pack ordered.`,
			added: true,
		}),
		stops: computed({
			label: say`What stops without it`,
			unit: "",
			value: optional(choice(stopped)),
			help: say`Disinfection, every safe round or descaling; or nothing: rounds go on, poorer.`,
			added: true,
		}),
	},
});
