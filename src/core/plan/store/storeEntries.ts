import { memoizeByObject } from "../../memoize.ts";
import type { Place } from "../../problem.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { journalSheet } from "../../sheets/journal.ts";
import { roundsDoneSheet } from "../../sheets/roundsDone.ts";
import type { JournalEntry } from "../../stock/onHand.ts";
import { drawnDaysOf, drawsOfRounds, isDrawnAlready } from "./drawsOfRounds.ts";

/** What happened to a lot of the store, and where it is written down. */
export interface StoreEntry {
	readonly item: string;
	readonly lot: string;
	readonly entry: JournalEntry;
	/** What names it where someone asks "why?"; no two alike. */
	readonly key: string;
	readonly label: string;
	readonly place: Place;
}

/** The journal of the store, then what rounds drew from it; an issue of what rounds drew that day does not count a second time. */
export const storeEntries = memoizeByObject((read: ReadWorkbook): readonly StoreEntry[] => {
	const draws = drawsOfRounds(read);
	const drawnDays = drawnDaysOf(draws);
	const written = read.tables.journal.rows
		.filter(({ value }) => !isDrawnAlready(value, drawnDays))
		.map(
			({ line, value: { item, lot, day, entry, quantity } }): StoreEntry => ({
				item,
				lot,
				entry: { day, entry, quantity },
				key: String(line),
				label: say`Entry`,
				place: { file: journalSheet.file, line, column: "quantity" },
			}),
		);
	const drawn = draws.map(
		({ line, lot: { value }, entry }): StoreEntry => ({
			item: value.item,
			lot: value.lot,
			entry,
			key: `round ${line}`,
			label: say`Drawn by a round`,
			place: { file: roundsDoneSheet.file, line, column: "litres" },
		}),
	);
	return [...written, ...drawn];
});
