import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, words } from "./computedValues.ts";
import { preparationColumns } from "./preparationColumns.ts";

export const mixingSheet = sheet({
	file: "mixing.csv",
	title: "Mixing one preparation",
	about:
		"How to make one preparation up to its full volume, for each product and lot that can be used on the first day.",
	columns: {
		product: computed({ label: "Product", unit: "", value: words(), help: "Chlorine product." }),
		lot: computed({
			label: "Lot",
			unit: "",
			value: words(),
			help: "Blank: no lot in the store; the label's strength.",
		}),
		strength_today_g_per_l: computed({
			label: "Strength of the product",
			unit: "g/L",
			value: amount(),
			decimals: 1,
			help: "Available chlorine in a litre of a liquid product; blank for powder and tablets.",
		}),
		...preparationColumns,
		strength_after_carry_in_pct: computed({
			label: "Strength after wet kits",
			unit: "%",
			value: amount(),
			decimals: 3,
			help: "When the water that wet kits carry in has weakened it.",
		}),
		remark: computed({
			label: "Remark",
			unit: "",
			value: words(),
			help: "What to look out for.",
			added: true,
		}),
	},
});
