import { typed } from "../column.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { choice } from "../values/choice.ts";
import { number } from "../values/number.ts";
import { name, note } from "../values/text.ts";

/** What a quantity of a consumable is counted by. */
const bases = ["day", "round", "load", "kit", "piece", "worker_round", "descale"] as const;

export const usageSheet = sheet({
	file: "usage.csv",
	title: "What is used up",
	about:
		"Each consumable, and how much of it goes for a day, a round that runs, a load, a kit, a piece, a person in a round, or a descaling.",
	columns: {
		item: typed({ label: "Item", unit: "", value: name(), help: "As listed under items." }),
		basis: typed({
			label: "Counted",
			unit: "",
			value: choice(bases),
			help: "What the quantity is for.",
		}),
		quantity: typed({
			label: "Quantity",
			unit: "in the item's measure",
			value: number({ min: 0, max: 100_000 }),
			decimals: 2,
			help: "How much goes each time.",
		}),
		note: typed({ label: "Note", unit: "", value: note(), help: "Where the figure is from." }),
	},
});

export type UsageRow = RowOf<typeof usageSheet>;
