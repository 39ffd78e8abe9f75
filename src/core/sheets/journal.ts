import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { journalKinds } from "../stock/onHand.ts";
import { choice } from "../values/choice.ts";
import { date } from "../values/date.ts";
import { name } from "../values/name.ts";
import { note } from "../values/note.ts";
import { number } from "../values/number.ts";
import { lineId } from "./lineId.ts";

export const journalSheet = sheet({
	file: "journal.csv",
	title: say`Journal of the store`,
	about: say`What came in, what went out and what was counted, line by line. Stock on hand is the lot's quantity and everything that has happened since.`,
	optional: true,
	columns: {
		day: typed({ label: say`Day`, unit: "", value: date(), help: say`When it happened.` }),
		item: typed({ label: say`Item`, unit: "", value: name(), help: say`As listed under items.` }),
		lot: typed({
			label: say`Lot`,
			unit: "",
			value: name(),
			help: say`As listed under lots in the store.`,
		}),
		entry: typed({
			label: say`Entry`,
			unit: "",
			value: choice(journalKinds),
			help: say`receipt: came in; issue: went out to be used; loss: spoiled, expired or broken; count: found on the shelf.`,
		}),
		quantity: typed({
			label: say`Quantity`,
			unit: say`in the item's measure`,
			value: number({ min: 0, max: 100_000_000 }),
			decimals: 2,
			help: say`How much; for a count, what is there.`,
		}),
		note: typed({ label: say`Note`, unit: "", value: note(), help: say`Who, why.` }),
		id: lineId(),
	},
});

export type JournalRow = RowOf<typeof journalSheet>;
