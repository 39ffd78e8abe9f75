import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { DAYS_PER_QUARTER } from "../values/date.ts";
import { amount, wholeAmount } from "./computedValues.ts";
import { textColumn } from "./textColumn.ts";

export const productCompareSheet = sheet({
	file: "product-compare.csv",
	title: say`Comparing the products`,
	about: say`The same litres of solution from each product the unit can get, ordered fresh, at the order interval that costs least.`,
	columns: {
		product: textColumn({ label: say`Product`, help: say`Chlorine product.` }),
		period: textColumn({
			label: say`Over`,
			help: say`A week or a quarter of ${DAYS_PER_QUARTER} days.`,
		}),
		litres: computed({
			label: say`Solution`,
			unit: "L",
			value: amount(),
			decimals: 0,
			help: say`Average, the same for every product.`,
		}),
		order_every_days: computed({
			label: say`Order every`,
			unit: say`days`,
			value: wholeAmount(),
			decimals: 0,
			help: say`Of those tried, the interval that costs least; the longest where the cost is the same.`,
		}),
		quantity: computed({
			label: say`Product`,
			unit: say`in the measure beside it`,
			value: amount(),
			decimals: 0,
			help: say`Needed over the period, while it loses strength.`,
		}),
		measure: textColumn({ label: say`Measured in`, coded: true, help: say`mL, g or tablet.` }),
		packs: computed({
			label: say`Packs`,
			unit: say`packs`,
			value: amount(),
			decimals: 1,
			help: say`Whole packs at each order, averaged over the period.`,
		}),
		cost: computed({
			label: say`Cost`,
			unit: say`currency`,
			value: amount(),
			decimals: 2,
			help: say`Of those packs.`,
		}),
		weight_kg: computed({
			label: say`To carry`,
			unit: "kg",
			value: amount(),
			decimals: 1,
			help: say`Of the product; blank for tablets, whose weight is not their chlorine.`,
		}),
		lost_g: computed({
			label: say`Lost because strength was lost`,
			unit: say`g chlorine`,
			value: amount(),
			decimals: 0,
			help: say`Available chlorine that was paid for and lost before use.`,
		}),
	},
});
