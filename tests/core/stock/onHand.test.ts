import { describe, expect, test } from "vitest";
import { readTable } from "../../../src/core/read/readTable.ts";
import { journalSheet } from "../../../src/core/sheets/journal.ts";
import { booksAfter } from "../../../src/core/stock/onHand.ts";
import { tableOf } from "../smallUnit.ts";

/** The lot of 10 after a journal, written "day entry quantity" line by line. */
function lotAfter(...lines: string[]) {
	const journal = readTable(
		journalSheet,
		tableOf(["day,item,lot,entry,quantity,note", ...lines.map(journalLine)].join("\n")),
	);
	expect(journal.badRows).toEqual([]);
	return booksAfter(
		10,
		journal.rows.map(({ value }) => value),
	);
}

function journalLine(line: string): string {
	const [day, entry, quantity] = line.split(" ");
	return `2027-02-${day},gauze,G1,${entry},${quantity},`;
}

describe("stock on hand of a lot of 10", () => {
	test.each([
		["nothing", [], 10, 0, 0],
		["a receipt and an issue", ["01 receipt 5", "02 issue 3"], 12, 0, 0],
		["a count", ["01 receipt 5", "02 issue 3", "03 count 11"], 11, 0, -1],
		["a count that finds more", ["01 issue 3", "02 count 9"], 9, 0, 2],
		["a count of none", ["01 count 0"], 0, 0, -10],
		["two counts, their differences added up", ["01 count 8", "02 count 9"], 9, 0, -1],
		["issues after a count", ["01 count 8", "02 issue 3"], 5, 0, -2],
		[
			"lines out of order: the days decide",
			["03 count 11", "01 receipt 5", "02 issue 3"],
			11,
			0,
			-1,
		],
		["one day, issue before count", ["01 issue 3", "01 count 6"], 6, 0, -1],
		["one day, count before issue", ["01 count 6", "01 issue 3"], 3, 0, -4],
		["all of it issued", ["01 issue 10"], 0, 0, 0],
		["issued beyond the books", ["01 issue 14"], 0, 4, 0],
		["issued beyond, then a receipt", ["01 issue 14", "02 receipt 5"], 5, 4, 0],
		["issued beyond twice", ["01 issue 12", "02 issue 3"], 0, 5, 0],
		["issued beyond, then counted", ["01 issue 14", "02 count 2"], 2, 0, 2],
		["a receipt dated before the issue saves it", ["02 issue 14", "01 receipt 5"], 1, 0, 0],
		["quarters", ["01 issue 0.25", "02 receipt 0.5"], 10.25, 0, 0],
	])("after %s", (_what, lines, quantity, short, counted) => {
		expect(lotAfter(...lines)).toMatchObject({ quantity, short, counted });
	});

	test("the last count is the latest by day, not by line", () => {
		expect(lotAfter("03 count 8", "01 count 9").lastCount?.day).toBe("2027-02-03");
		expect(lotAfter("01 issue 1").lastCount).toBeUndefined();
	});
});

describe("the journal refuses what cannot be", () => {
	test.each([
		["a negative quantity", "2027-02-01,gauze,G1,issue,-3,", "quantity"],
		["more than any store holds", "2027-02-01,gauze,G1,receipt,1e9,", "quantity"],
		["no quantity", "2027-02-01,gauze,G1,count,,", "quantity"],
		["a quantity with two meanings", "2027-02-01,gauze,G1,count,1;000,", "quantity"],
		["an entry of another name", "2027-02-01,gauze,G1,loan,3,", "entry"],
		["no day", ",gauze,G1,issue,3,", "day"],
		["a day that is none", "2027-02-30,gauze,G1,issue,3,", "day"],
		["no lot", "2027-02-01,gauze,,issue,3,", "lot"],
	])("%s, with the place", (_what, line, column) => {
		const read = readTable(journalSheet, tableOf(`day,item,lot,entry,quantity,note\n${line}`));
		expect(read.rows).toEqual([]);
		expect(read.badRows.flatMap((row) => row.problems)).toMatchObject([
			{ code: "bad-cell", file: "journal.csv", line: 2, column },
		]);
	});
});
