import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { date } from "../values/date.ts";
import { name } from "../values/name.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";

export const lotsSheet = sheet({
	file: "lots.csv",
	title: say`Lots in the store`,
	about: say`What is on the shelf or on the way, lot by lot.`,
	unique: ["item", "lot"],
	columns: {
		item: typed({ label: say`Item`, unit: "", value: name(), help: say`As listed under items.` }),
		lot: typed({
			label: say`Lot`,
			unit: "",
			value: name(),
			help: say`Number on the box or bottle.`,
		}),
		quantity: typed({
			label: say`Quantity`,
			unit: say`in the item's measure`,
			value: number({ min: 0, max: 100_000_000 }),
			decimals: 2,
			help: say`What is left of it.`,
		}),
		made_on: typed({
			label: say`Made on`,
			unit: "",
			value: optional(date()),
			help: say`From the label; a liquid loses strength from this day on.`,
		}),
		received_on: typed({
			label: say`Received on`,
			unit: "",
			value: optional(date()),
			help: say`Used in place of the day it was made, where that is not known.`,
		}),
		arrives_on: typed({
			label: say`Arrives on`,
			unit: "",
			value: optional(date()),
			help: say`For a lot that is ordered and not here yet.`,
		}),
		expires_on: typed({
			label: say`Expires on`,
			unit: "",
			value: optional(date()),
			help: say`Last day it may be used.`,
		}),
	},
});

export type LotsRow = RowOf<typeof lotsSheet>;
