import type { TextTable } from "../../workbook.ts";
import { blockCells } from "./blockCells.ts";
import type { BlockCell, BlockTable, Customs, Question, Rewritten } from "./blockTable.ts";
import { customsOf, type SheetReadings } from "./customsOf.ts";
import { dateReadings, yearIn } from "./dateReadings.ts";
import { numberReadings } from "./numberReadings.ts";
import { isOpen, type TwoReadings, type Which } from "./twoReadings.ts";

/** A block in the clear form of the files, as far as it could be understood. */
export interface ReadBlock {
	/** The tables in their order; those that were clear already are the same objects. */
	readonly tables: readonly TextTable[];
	/** The first open text of each kind: with an answer to it the block is read again. */
	readonly questions: readonly Question[];
	readonly rewritten: readonly Rewritten[];
}

/**
 * Reads numbers and dates of a block (all files given together, or one paste) as they were
 * written: what a mark means is decided for the whole sheet or block, never for a cell.
 *
 * Numbers then stand with a decimal point and nothing between thousands, dates as
 * year-month-day. A text that means something else under another custom, and nothing tells
 * which was meant, is left as it is and asked about. Text that means nothing stays too.
 *
 * @param asked what the person answered, where they did
 * @param year by which one of two digits is understood, where the block names none in full
 */
export function readBlock(
	given: readonly BlockTable[],
	asked: Customs = {},
	year?: number,
): ReadBlock {
	const cells = given.map(blockCells);
	const near = yearIn(cells.flat()) ?? year;
	const numbers = settled(
		given.map((table, at) => ({
			cells: (cells[at] as BlockCell[]).flatMap(numberReadings),
			separator: table.separator === ";" ? "second" : undefined,
			isOurs: wasSavedHere(table),
		})),
		asked.numbers && (asked.numbers === "point" ? "first" : "second"),
	);
	const dates = settled(
		cells.map((own) => ({ cells: own.flatMap((cell) => dateReadings(cell, near)) })),
		asked.dates && (asked.dates === "day-first" ? "first" : "second"),
	);
	const clear = given.map((table, at) => {
		const all = [numbers, dates].flatMap((of) => of.clear[at] as Clear[]);
		// Typed here and taken in no form, a text stays the problem that it was.
		return wasSavedHere(table) ? all.filter(isTaken) : all;
	});
	return {
		tables: given.map(({ table }, at) => withTexts(table, clear[at] as Clear[])),
		questions: [
			...numbers.open.slice(0, 1).map((open) => question("numbers", open)),
			...dates.open.slice(0, 1).map((open) => question("dates", open)),
		],
		rewritten: clear
			.flat()
			.map(({ cell: { place, text }, text: now }) => ({ place, text, clear: now })),
	};
}

/** Another program that saved it again would have put its own separator. */
function wasSavedHere({ isOurs, separator }: BlockTable): boolean {
	return isOurs === true && separator === ",";
}

interface Clear {
	readonly cell: BlockCell;
	readonly text: string;
}

/** Each sheet's texts in the clear form, and those that stay open. */
function settled(
	sheets: readonly SheetReadings[],
	asked: Which | undefined,
): { readonly clear: Clear[][]; readonly open: TwoReadings[] } {
	const customs = customsOf(sheets, asked);
	const open: TwoReadings[] = [];
	const clear = sheets.map(({ cells, isOurs }, at) =>
		cells.flatMap((both): Clear[] => {
			const custom = customs[at]?.(both);
			if (isOpen(both) && custom === undefined) {
				// A comma in what this program wrote was typed, and stays the problem that it was; 1.400 it writes as 1.4000.
				if (!isOurs || both.ownOnly) open.push(both);
				return [];
			}
			const text = (custom && both[custom]) ?? both.first ?? both.second;
			return text === undefined || text === both.cell.text ? [] : [{ cell: both.cell, text }];
		}),
	);
	return { clear, open };
}

function isTaken({ cell: { column }, text }: Clear): boolean {
	return column.value.schema.safeParse(text).success;
}

function withTexts(table: TextTable, clear: readonly Clear[]): TextTable {
	if (clear.length === 0) return table;
	const rows = [...table.rows];
	for (const { cell, text } of clear) {
		const row = [...(rows[cell.row] as readonly string[])];
		row[cell.at] = text;
		rows[cell.row] = row;
	}
	return { ...table, rows };
}

function question(about: Question["about"], { cell, first, second }: TwoReadings): Question {
	const { place, column, text } = cell;
	return {
		about,
		place,
		label: column.label,
		text,
		readings: [first as string, second as string],
	};
}
