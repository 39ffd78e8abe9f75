import { expect, test } from "vitest";
import { withEmptyRow } from "../../../src/core/edit/withEmptyRow.ts";
import { withLineIds } from "../../../src/core/edit/withLineIds.ts";
import { withoutRows } from "../../../src/core/edit/withoutRows.ts";
import { withRow } from "../../../src/core/edit/withRow.ts";
import { type Workbook, withTable } from "../../../src/core/workbook.ts";
import { tableOf } from "../smallUnit.ts";

const FILE = "uses.csv";
const start: Workbook = {
	tables: {
		[FILE]: tableOf(
			"at,kit,what,by,note,id\n2027-03-01 08:00,A,used,,,\n2027-03-01 09:00,B,used,,,x1",
		),
	},
};
let made = 0;
const newId = () => `n${++made}`;
const after = (next: Workbook, before = start) => {
	made = 0;
	return withLineIds(before, next, newId);
};
const ids = (workbook: Workbook) =>
	workbook.tables[FILE]?.rows.map((row) => row[workbook.tables[FILE]?.header.indexOf("id") ?? -1]);
const use = { at: "2027-03-01 10:00", kit: "C", what: "used" };

test.each<[string, Workbook, (string | undefined)[]]>([
	["a line entered has a mark", withRow(start, FILE, use), ["", "x1", "n1"]],
	[
		"a line of old that is put right has none",
		withRow(start, FILE, { note: "late" }, 0),
		["", "x1"],
	],
	["nor does one that moved up", withoutRows(start, FILE, new Set([0])), ["x1"]],
	["a row that is still empty has none", withEmptyRow(start, FILE, 1), ["", "", "x1"]],
	[
		"a line emptied loses its mark",
		withRow(start, FILE, { at: "", kit: "", what: "" }, 1),
		["", ""],
	],
	[
		"a line that brings its own keeps it",
		withRow(start, FILE, { ...use, id: "own" }),
		["", "x1", "own"],
	],
])("%s", (_, next, expected) => {
	expect(ids(after(next))).toEqual(expected);
});

test("an empty row that is filled in has a mark", () => {
	const empty = withEmptyRow(start, FILE, 1);
	expect(ids(after(withRow(empty, FILE, use, 1), empty))).toEqual(["", "n1", "x1"]);
});

test("a file without the column gets it, unless a cell beyond its header would stand under it", () => {
	const old = (line: string): Workbook => ({
		tables: { [FILE]: tableOf(`at,kit,what,by\n${line}`) },
	});
	const plain = old("2027-03-01 08:00,A,used,");
	expect(after(withRow(plain, FILE, use), plain).tables[FILE]?.header).toEqual([
		"at",
		"kit",
		"what",
		"by",
		"id",
	]);
	const stray = old("2027-03-01 08:00,A,used,,stray");
	const next = withRow(stray, FILE, use);
	expect(after(next, stray)).toBe(next);
});

test("a column of marks may stand first, and short lines are filled up to it", () => {
	const first: Workbook = {
		tables: { [FILE]: tableOf("id,at,kit,what\n,2027-03-01 08:00,A,used") },
	};
	const next = after(withRow(first, FILE, use), first);
	expect(next.tables[FILE]?.header).toEqual(["id", "at", "kit", "what"]);
	expect(ids(next)).toEqual(["", "n1"]);
	const table = { header: ["at", "kit", "what", "by", "id"], rows: [["2027-03-01 10:00", "C"]] };
	const short = after({ tables: { [FILE]: table } }, { tables: {} });
	expect(short.tables[FILE]?.rows).toEqual([["2027-03-01 10:00", "C", "", "", "n1"]]);
	const blank = { tables: { [FILE]: { ...table, rows: [[" ", "", "", "", " x9 "]] } } };
	expect(after(blank, { tables: {} }).tables[FILE]?.rows).toEqual([[" ", "", "", "", ""]]);
	const gone = { tables: {} };
	expect(after(gone)).toBe(gone);
});

test("spaces are no mark, and a line that an edit left alone keeps its own, blank or not", () => {
	expect(ids(after(withRow(start, FILE, { ...use, id: "  " })))).toEqual(["", "x1", "n1"]);
	const spaces = withRow(start, FILE, { at: "  " });
	expect(ids(after(withRow(spaces, FILE, use, 2), spaces))).toEqual(["", "x1", "n1"]);
	const blank = withRow(start, FILE, { id: "x9" });
	expect(ids(after(withRow(blank, FILE, { note: "late" }, 0), blank))).toEqual(["", "x1", "x9"]);
	expect(ids(after(withRow(blank, FILE, use), blank))).toEqual(["", "x1", "x9", "n1"]);
});

test("other sheets, and an edit that enters nothing, are the same objects", () => {
	const kits = withTable(start, "kits.csv", tableOf("kit,kind\nA,bag set"));
	expect(after(kits)).toBe(kits);
	expect(after(start)).toBe(start);
});
