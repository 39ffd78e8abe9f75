import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount } from "./computedValues.ts";
import { textColumn } from "./textColumn.ts";

export const costsSheet = sheet({
	file: "costs.csv",
	title: say`What it costs`,
	about: say`Average use over the plan at the prices of the packs, and what a change of product or rule would save. Items without a price are left out and named.`,
	columns: {
		what: textColumn({ label: say`What`, help: say`As things are, or with one change.` }),
		per_week: computed({
			label: say`A week`,
			unit: say`currency`,
			value: amount(),
			decimals: 2,
			help: say`All items that have a price.`,
		}),
		per_birth: computed({
			label: say`A birth`,
			unit: say`currency`,
			value: amount(),
			decimals: 3,
			help: say`By the average births.`,
		}),
		per_kit: computed({
			label: say`A kit reprocessed`,
			unit: say`currency`,
			value: amount(),
			decimals: 3,
			help: say`By the average kits to reprocess.`,
		}),
		saved_per_week: textColumn({
			label: say`Saved a week`,
			unit: say`currency`,
			signed: true,
			help: say`Against things as they are; a minus costs more.`,
		}),
		remark: textColumn({ label: say`Remark`, help: say`What is not counted.` }),
	},
});
