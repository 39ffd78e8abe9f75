import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount } from "./computedValues.ts";
import { preparationColumns } from "./preparationColumns.ts";
import { textColumn } from "./textColumn.ts";

export const wallTableSheet = sheet({
	file: "wall-table.csv",
	title: say`Mixing table for the wall`,
	about: say`How much product for how many litres, for each lot in the store on the first day of the plan, measured out for its weakest day until the end of that month. As a lot loses strength the amounts grow: make a new table each month and whenever the lot changes.`,
	columns: {
		product: textColumn({ label: say`Product`, help: say`Chlorine product.` }),
		lot: textColumn({ label: say`Lot`, help: say`Blank: by the label.` }),
		...preparationColumns,
		exact_litres: computed({
			label: say`Exact for`,
			unit: "L",
			value: amount(),
			decimals: 2,
			help: say`Litres for which this much product makes just the strength wanted.`,
		}),
		until: textColumn({
			label: say`Good until`,
			help: say`The lot's weakest day, for which it is measured out: the end of the month, or when the lot ends before.`,
			added: true,
		}),
	},
});
