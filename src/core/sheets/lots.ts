import { typed } from "../column.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { date } from "../values/date.ts";
import { number } from "../values/number.ts";
import { name } from "../values/text.ts";
import { optional } from "../values/valueKind.ts";

export const lotsSheet = sheet({
	file: "lots.csv",
	title: "Lots in the store",
	about: "What is on the shelf or on its way, lot by lot.",
	unique: ["item", "lot"],
	columns: {
		item: typed({ label: "Item", unit: "", value: name(), help: "As listed under items." }),
		lot: typed({ label: "Lot", unit: "", value: name(), help: "Number on the box or bottle." }),
		quantity: typed({
			label: "Quantity",
			unit: "in the item's measure",
			value: number({ min: 0, max: 100_000_000 }),
			decimals: 2,
			help: "What is left of it.",
		}),
		made_on: typed({
			label: "Made on",
			unit: "",
			value: optional(date()),
			help: "From the label; liquids fade from this day on.",
		}),
		received_on: typed({
			label: "Received on",
			unit: "",
			value: optional(date()),
			help: "Used in place of the day it was made, where that is not known.",
		}),
		arrives_on: typed({
			label: "Arrives on",
			unit: "",
			value: optional(date()),
			help: "For a lot that is ordered and not here yet.",
		}),
		expires_on: typed({
			label: "Expires on",
			unit: "",
			value: optional(date()),
			help: "Last day it may be used.",
		}),
	},
});

export type LotsRow = RowOf<typeof lotsSheet>;
