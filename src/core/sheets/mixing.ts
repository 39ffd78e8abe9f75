import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount } from "./computedValues.ts";
import { preparationColumns } from "./preparationColumns.ts";
import { textColumn } from "./textColumn.ts";

export const mixingSheet = sheet({
	file: "mixing.csv",
	title: say`Mixing one preparation`,
	about: say`How to make one preparation up to its full volume, for each product and lot that can be used on the first day.`,
	columns: {
		product: textColumn({ label: say`Product`, help: say`Chlorine product.` }),
		lot: textColumn({
			label: say`Lot`,
			help: say`Blank: no lot in the store; the label's strength.`,
		}),
		strength_today_g_per_l: computed({
			label: say`Strength of the product`,
			unit: "g/L",
			value: amount(),
			decimals: 1,
			help: say`Available chlorine in a litre of a liquid product; blank for powder and tablets.`,
		}),
		...preparationColumns,
		strength_after_carry_in_pct: computed({
			label: say`Strength after wet kits`,
			unit: "%",
			value: amount(),
			decimals: 3,
			help: say`When the water that wet kits carry in has weakened it.`,
		}),
		remark: textColumn({ label: say`Remark`, help: say`What to look out for.`, added: true }),
	},
});
