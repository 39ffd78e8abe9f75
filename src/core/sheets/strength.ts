import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount, wholeAmount } from "./computedValues.ts";
import { textColumn } from "./textColumn.ts";

export const strengthSheet = sheet({
	file: "strength.csv",
	title: say`Strength of every lot`,
	about: say`What each lot holds on the first day of the plan, and the last day on which it still makes the strength wanted.`,
	columns: {
		product: textColumn({ label: say`Product`, help: say`Chlorine product.` }),
		lot: textColumn({ label: say`Lot`, help: say`Number on the box or bottle.` }),
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
		measured_on: textColumn({ label: say`Measured on`, help: say`Day of that reading.` }),
		last_usable_day: textColumn({
			label: say`Usable until`,
			help: say`The earlier of its expiry and the day it falls below the strength wanted.`,
		}),
		remark: textColumn({ label: say`Remark`, help: say`What to look out for.` }),
	},
});
