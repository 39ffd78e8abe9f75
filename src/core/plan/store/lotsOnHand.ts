import { derive, type Figure, listOf, typedFigure } from "../../calculation.ts";
import { memoizeByObject } from "../../memoize.ts";
import { answer, valueIn } from "../../outcome.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadTables } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { type JournalRow, journalSheet } from "../../sheets/journal.ts";
import { type LotsRow, lotsSheet } from "../../sheets/lots.ts";
import { type JournalEntry, onHand, onHandInputs } from "../../stock/onHand.ts";
import type { IsoDate } from "../../values/date.ts";

/** A lot of the store with what is left of it. */
export interface LotOnHand {
	readonly row: GoodRow<LotsRow>;
	/** As listed; after an entry of the journal, worked out. */
	readonly onHand: Figure;
	/** The value of `onHand`, which always has one. */
	readonly quantity: number;
	readonly entries: Figure<JournalEntry[]>;
}

/** Every lot that could be understood, as the journal leaves it. */
export const lotsOnHand = memoizeByObject(
	({ lots, journal }: Pick<ReadTables, "lots" | "journal">): readonly LotOnHand[] => {
		const byLot = new Map<string, GoodRow<JournalRow>[]>();
		for (const row of journal.rows) {
			const ofLot = byLot.get(nameOf(row.value));
			if (ofLot) ofLot.push(row);
			else byLot.set(nameOf(row.value), [row]);
		}
		return lots.rows.map((row) => {
			const entries = entriesFigure(byLot.get(nameOf(row.value)) ?? []);
			const listed = cellFigure(lotsSheet, row, "quantity");
			const hasEntries = (valueIn(entries)?.length ?? 0) > 0;
			const figure = hasEntries ? derive(onHand, { listed, entries }) : listed;
			return { row, onHand: figure, quantity: valueIn(figure) as number, entries };
		});
	},
);

/** Whether a lot was announced and nothing says yet that it came: no day of receipt, no entry of the journal. */
export function isComing({ row, entries }: LotOnHand): boolean {
	const { arrives_on: arrives, received_on: received } = row.value;
	return arrives !== null && received === null && valueIn(entries)?.length === 0;
}

/** Whether the day has passed on which a lot should have come. */
export function isOverdue(lot: LotOnHand, day: IsoDate): boolean {
	return isComing(lot) && (lot.row.value.arrives_on ?? day) < day;
}

function nameOf({ item, lot }: { readonly item: string; readonly lot: string }): string {
	return JSON.stringify([item, lot]);
}

function entriesFigure(rows: readonly GoodRow<JournalRow>[]): Figure<JournalEntry[]> {
	const { label, unit } = onHandInputs.entries;
	const entries = rows.map(({ value: { day, entry, quantity } }) => ({ day, entry, quantity }));
	return listOf(label, unit, answer(entries), () =>
		Object.fromEntries(
			rows.map(({ line }, i): [string, Figure<JournalEntry>] => [
				String(line),
				typedFigure(say`Entry`, unit, entries[i] as JournalEntry, {
					file: journalSheet.file,
					line,
					column: "quantity",
				}),
			]),
		),
	);
}
