import { typed } from "../column.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { choice } from "../values/choice.ts";
import { date } from "../values/date.ts";
import { number } from "../values/number.ts";
import { name, note } from "../values/text.ts";

export const journalSheet = sheet({
	file: "journal.csv",
	title: "Journal of the store",
	about:
		"What came in, what went out and what was counted, line by line. Stock on hand is the lot's quantity and everything that has happened since.",
	optional: true,
	columns: {
		day: typed({ label: "Day", unit: "", value: date(), help: "When it happened." }),
		item: typed({ label: "Item", unit: "", value: name(), help: "As listed under items." }),
		lot: typed({
			label: "Lot",
			unit: "",
			value: name(),
			help: "As listed under lots in the store.",
		}),
		entry: typed({
			label: "Entry",
			unit: "",
			value: choice(["receipt", "issue", "count"]),
			help: "receipt: came in; issue: went out or was thrown away; count: found on the shelf.",
		}),
		quantity: typed({
			label: "Quantity",
			unit: "in the item's measure",
			value: number({ min: 0, max: 100_000_000 }),
			decimals: 2,
			help: "How much; for a count, what is there.",
		}),
		note: typed({ label: "Note", unit: "", value: note(), help: "Who, why." }),
	},
});

export type JournalRow = RowOf<typeof journalSheet>;
