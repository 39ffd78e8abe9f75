import { derive, type Figure, listOf, typedFigure } from "../../calculation.ts";
import { memoizeByObject } from "../../memoize.ts";
import { answer, valueIn } from "../../outcome.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { type JournalRow, journalSheet } from "../../sheets/journal.ts";
import { type LotsRow, lotsSheet } from "../../sheets/lots.ts";
import { roundsDoneSheet } from "../../sheets/roundsDone.ts";
import { type JournalEntry, onHand, onHandInputs } from "../../stock/onHand.ts";
import type { IsoDate } from "../../values/date.ts";
import { type Draw, drawnDaysOf, drawsOfRounds, isDrawnAlready } from "./drawsOfRounds.ts";

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
export const lotsOnHand = memoizeByObject((read: ReadWorkbook): readonly LotOnHand[] => {
	const { lots, journal } = read.tables;
	const draws = drawsOfRounds(read);
	const drawnDays = drawnDaysOf(draws);
	const byLot = new Map<string, GoodRow<JournalRow>[]>();
	for (const row of journal.rows) {
		if (isDrawnAlready(row.value, drawnDays)) continue;
		const ofLot = byLot.get(nameOf(row.value));
		if (ofLot) ofLot.push(row);
		else byLot.set(nameOf(row.value), [row]);
	}
	return lots.rows.map((row) => {
		const entries = entriesFigure(
			byLot.get(nameOf(row.value)) ?? [],
			draws.filter(({ lot }) => lot === row),
		);
		const listed = cellFigure(lotsSheet, row, "quantity");
		const hasEntries = (valueIn(entries)?.length ?? 0) > 0;
		const figure = hasEntries ? derive(onHand, { listed, entries }) : listed;
		return { row, onHand: figure, quantity: valueIn(figure) as number, entries };
	});
});

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

function entriesFigure(
	rows: readonly GoodRow<JournalRow>[],
	draws: readonly Draw[],
): Figure<JournalEntry[]> {
	const { label, unit } = onHandInputs.entries;
	const written = rows.map(({ line, value: { day, entry, quantity } }) => ({
		key: String(line),
		label: say`Entry`,
		place: { file: journalSheet.file, line, column: "quantity" },
		entry: { day, entry, quantity },
	}));
	const drawn = draws.map(({ line, entry }) => ({
		key: `round ${line}`,
		label: say`Drawn by a round`,
		place: { file: roundsDoneSheet.file, line, column: "litres" },
		entry,
	}));
	const all = [...written, ...drawn];
	const entries = all.map(({ entry }): JournalEntry => entry);
	return listOf(label, unit, answer(entries), () =>
		Object.fromEntries(
			all.map(({ key, label: name, place, entry }): [string, Figure<JournalEntry>] => [
				key,
				typedFigure(name, unit, entry, place),
			]),
		),
	);
}
