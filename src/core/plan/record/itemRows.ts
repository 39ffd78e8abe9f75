import { nameFigure, typedFigure } from "../../calculation.ts";
import type { ComputedRow } from "../../computedTable.ts";
import { Grouped } from "../../grouped.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { itemsSheet } from "../../sheets/items.ts";
import type { monthSheet } from "../../sheets/month.ts";
import type { JournalEntry } from "../../stock/onHand.ts";
import type { IsoDate } from "../../values/date.ts";
import { type StoreEntry, storeEntries } from "../store/storeEntries.ts";
import { cameAsLots } from "./itemsOverDays.ts";
import { recorded } from "./recorded.ts";

/** What was issued of each item over some days, by the journal of the store and the rounds that draw from it; what came in and what was lost beside it, in words. */
export function itemRows(
	read: ReadWorkbook,
	days: readonly IsoDate[],
): ComputedRow<typeof monthSheet>[] {
	const entriesOf = new Grouped<string, StoreEntry>();
	for (const each of storeEntries(read)) entriesOf.add(each.item, each);
	const all = new Set(days);
	const came = cameAsLots(read, days);
	return read.tables.items.rows.map((item) => {
		const { item: name, measure } = item.value;
		const entries = entriesOf.of(name);
		const within = entries.map(({ entry }) => entry).filter(({ day }) => all.has(day));
		const sum = (kind: JournalEntry["entry"]) =>
			within.reduce((all, { entry, quantity }) => all + (entry === kind ? quantity : 0), 0);
		const received = sum("receipt") + (came.get(name) ?? 0);
		const { done, note } = recorded(
			say`Issued`,
			measure,
			days,
			entries
				.filter(({ entry }) => entry.entry === "issue")
				.map(({ key, label, place, entry: { day, quantity } }) => ({
					day,
					name: key,
					figure: typedFigure(label, measure, quantity, place),
				})),
			entries.map(({ entry }) => entry.day),
		);
		return {
			measure: cellFigure(itemsSheet, item, "item"),
			unit: cellFigure(itemsSheet, item, "measure"),
			planned_expected: nameFigure(say`Planned, average`, null),
			planned_set_aside: nameFigure(say`Planned, prepare for`, null),
			done: done ?? nameFigure(say`Done`, null),
			note: nameFigure(say`Note`, done ? withOthers(note, received, sum("loss")) : note),
		};
	});
}

/** A sum of typed quantities carries the rounding error of adding. */
const DECIMALS = 6;

/** The note with what came in and what was lost, where anything was. */
function withOthers(note: string, received: number, lost: number): string {
	const came = Number(received.toFixed(DECIMALS));
	const gone = Number(lost.toFixed(DECIMALS));
	if (came === 0 && gone === 0) return note;
	if (gone === 0) return say`${note}; received ${came}`;
	return came === 0 ? say`${note}; lost ${gone}` : say`${note}; received ${came}, lost ${gone}`;
}
