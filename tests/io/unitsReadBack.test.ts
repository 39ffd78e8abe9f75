import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { csvRecords } from "../../src/io/csvRecords.ts";
import { readCsv } from "../../src/io/readCsv.ts";
import { readUnits } from "../../src/io/readUnits.ts";
import { writeCsv } from "../../src/io/writeCsv.ts";
import { always, cellText } from "../properties/workbooks.ts";

const bytesOf = (text: string) => new TextEncoder().encode(text);

/** Tables of any texts under the names of the format; the header is one that reading leaves as it is. */
const table = fc.array(fc.array(cellText, { maxLength: 5 }), { maxLength: 5 }).map((rows) => ({
	header: ["a", "b"],
	rows,
}));
const workbook = fc.record({ "births.csv": table, "kits.csv": table, "lots.csv": table });
const unitName = fc.oneof(
	fc.constantFrom("=1+1", "'=1+1", 'the "big" one', "A;B", "constructor", "__proto__", "\ufeffA"),
	cellText,
);

describe("nothing is lost or changed", () => {
	test("what many workbooks hold is read back, whatever their cells and names", () => {
		const units = fc
			.uniqueArray(
				fc.record({
					name: unitName.filter(
						(name) => name !== "" && name.trim() === name && name.isWellFormed(),
					),
					workbook,
				}),
				{ selector: ({ name }) => name, minLength: 1, maxLength: 5 },
			)
			.map((list) => new Map(list.map(({ name, workbook: tables }) => [name, tables])));
		fc.assert(
			fc.property(units, (given) => {
				const files = ["births.csv", "kits.csv", "lots.csv"] as const;
				const set = files.map((name) => ({
					name,
					bytes: bytesOf(
						writeCsv({
							header: ["unit_name", "a", "b"],
							rows: [...given].flatMap(([unit, tables]) =>
								tables[name].rows.map((cells) => [unit, ...cells]),
							),
						}),
					),
				}));
				const read = new Map(readUnits(set).units.map((unit) => [unit.name, unit.workbook]));
				for (const [unit, tables] of given)
					for (const name of files)
						if (read.has(unit) || tables[name].rows.length > 0)
							expect(read.get(unit)?.tables[name]?.rows).toEqual(wellFormed(tables[name].rows));
			}),
			always(200),
		);
	});

	test("records and lines are those of the reader of single files", () => {
		const piece = fc.constantFrom(...'ab,,;\t""\r\n\n\' ='.split(""), "\r\n", '"x"', '""', "'=");
		fc.assert(
			fc.property(fc.array(piece, { maxLength: 40 }), (pieces) => {
				const text = pieces.join("");
				const { table: one, problems } = readCsv("births.csv", text);
				const all = csvRecords(text);
				const blank = (cells: readonly string[]) => (cells.length === 0 ? [""] : cells);
				expect(all.records).toEqual(text === "" ? [] : [one.header, ...one.rows].map(blank));
				expect(all.records.slice(1).map((_, row) => all.lineOf(row + 1))).toEqual(one.lines);
				expect(all.slips.length > 0).toBe(problems.length > 0);
			}),
			always(2000),
		);
	});
});

/** Lone halves of a letter pair have no UTF-8, and become the sign for that when a file is written. */
function wellFormed(rows: readonly (readonly string[])[]): string[][] {
	return rows.map((cells) => cells.map((cell) => cell.toWellFormed()));
}
