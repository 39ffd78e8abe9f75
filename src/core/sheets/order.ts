import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { yesNo } from "../values/choice.ts";
import { optional } from "../values/valueKind.ts";
import { amount, wholeAmount, words } from "./computedValues.ts";

const inMeasure = "in the item's measure";

export const orderSheet = sheet({
	file: "order.csv",
	title: "What to order",
	about:
		"For each item: what is there, what will be used until the next order has come in, and how many packs to order now.",
	columns: {
		item: computed({ label: "Item", unit: "", value: words(), help: "As listed under items." }),
		measure: computed({
			label: "Measure",
			unit: "",
			value: words(),
			help: "Unit of the quantities.",
		}),
		usable: computed({
			label: "Usable",
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			help: "In the store, in date, strong enough, and used before it goes out of date.",
		}),
		on_order: computed({
			label: "On order",
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			help: "Lots that arrive before the next order comes in, and are used before they go out of date.",
		}),
		use_expected: computed({
			label: "Use, expected",
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			help: "Over lead and review days.",
		}),
		target_stock: computed({
			label: "Target stock",
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			help: "Lasts that long as surely as the item's service level asks, wastage included.",
		}),
		order_packs: computed({
			label: "Order",
			unit: "packs",
			value: wholeAmount(),
			decimals: 0,
			help: "Whole packs.",
		}),
		order_quantity: computed({
			label: "That is",
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			help: "Packs × pack size.",
		}),
		cost: computed({
			label: "Cost",
			unit: "currency",
			value: amount(),
			decimals: 2,
			help: "Blank where the price is not known.",
		}),
		run_out_on: computed({
			label: "Runs out on",
			unit: "",
			value: words(),
			help: "First day whose expected use is not covered; blank: not within the days looked at.",
		}),
		order_by: computed({
			label: "Order by",
			unit: "",
			value: words(),
			help: "So that the delivery comes before the reserve is touched.",
		}),
		months_of_stock: computed({
			label: "Months of stock",
			unit: "months",
			value: amount(),
			decimals: 1,
			help: "Usable stock at the mean use.",
		}),
		remark: computed({ label: "Remark", unit: "", value: words(), help: "What to look out for." }),
		emergency: computed({
			label: "Runs out before an order can arrive",
			unit: "",
			value: optional(yesNo()),
			help: "yes: find some elsewhere today.",
			added: true,
		}),
		pack_size: computed({
			label: "Pack size",
			unit: inMeasure,
			value: amount(),
			decimals: 1,
			help: "How much is in one pack.",
			added: true,
		}),
		pack_price: computed({
			label: "Price of a pack",
			unit: "currency",
			value: amount(),
			decimals: 2,
			help: "Blank where it is not known.",
			added: true,
		}),
		unit_name: computed({
			label: "Unit",
			unit: "",
			value: words(),
			help: "So that several units' orders can be told apart.",
			added: true,
		}),
	},
});
