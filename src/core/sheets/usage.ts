import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { usageBases } from "../stock/ratesOfItem.ts";
import { choice } from "../values/choice.ts";
import { name } from "../values/name.ts";
import { note } from "../values/note.ts";
import { number } from "../values/number.ts";

export const usageSheet = sheet({
	file: "usage.csv",
	title: say`What is used up`,
	about: say`Each consumable, and how much of it goes for a day, a round that runs, a load, a kit, a piece, a person in a round, or a descaling.`,
	alike: ["item", "basis"],
	columns: {
		item: typed({ label: say`Item`, unit: "", value: name(), help: say`As listed under items.` }),
		basis: typed({
			label: say`Counted`,
			unit: "",
			value: choice(usageBases),
			help: say`What the quantity is for.`,
		}),
		quantity: typed({
			label: say`Quantity`,
			unit: say`in the item's measure`,
			value: number({ min: 0, max: 100_000 }),
			decimals: 2,
			help: say`How much goes each time.`,
		}),
		note: typed({
			label: say`Note`,
			unit: "",
			value: note(),
			help: say`Where the figure is from.`,
		}),
	},
});

export type UsageRow = RowOf<typeof usageSheet>;
