import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount, wholeAmount, words } from "./computedValues.ts";

export const strengthSheet = sheet({
	file: "strength.csv",
	title: say`Strength of every lot`,
	about: say`What each lot holds on the first day of the plan, and the last day on which it still makes the strength wanted.`,
	columns: {
		product: computed({
			label: say`Product`,
			unit: "",
			value: words(),
			help: say`Chlorine product.`,
		}),
		lot: computed({
			label: say`Lot`,
			unit: "",
			value: words(),
			help: say`Number on the box or bottle.`,
		}),
		age_days: computed({
			label: say`Age`,
			unit: say`days`,
			value: wholeAmount(),
			decimals: 0,
			help: say`Since it was made, or received where that is not known.`,
		}),
		label_strength: computed({
			label: say`On the label`,
			unit: say`% or g/tablet`,
			value: amount(),
			decimals: 2,
			help: say`When it was made.`,
		}),
		strength_today: computed({
			label: say`Today`,
			unit: say`% or g/tablet`,
			value: amount(),
			decimals: 2,
			help: say`Computed for the first day of the plan.`,
		}),
		measured_pct: computed({
			label: say`Measured`,
			unit: "%",
			value: amount(),
			decimals: 2,
			help: say`Latest reading; it flags and does not overrule.`,
		}),
		measured_on: computed({
			label: say`Measured on`,
			unit: "",
			value: words(),
			help: say`Day of that reading.`,
		}),
		last_usable_day: computed({
			label: say`Usable until`,
			unit: "",
			value: words(),
			help: say`The earlier of its expiry and the day it falls below the strength wanted.`,
		}),
		remark: computed({
			label: say`Remark`,
			unit: "",
			value: words(),
			help: say`What to look out for.`,
		}),
	},
});
