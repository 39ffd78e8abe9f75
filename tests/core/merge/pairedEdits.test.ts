import { expect, test } from "vitest";
import { pairedEdits } from "../../../src/core/merge/pairedEdits.ts";
import type { Sheet } from "../../../src/core/sheet.ts";
import { kitsSheet } from "../../../src/core/sheets/kits.ts";
import { usesSheet } from "../../../src/core/sheets/uses.ts";
import { tableOf } from "../smallUnit.ts";

const HEADER = "id,at,kit,what";
const table = (...lines: readonly string[]) => tableOf([HEADER, ...lines].join("\n"));
const [A, B, C] = ["q1,2027-03-01,A,used", "q2,2027-03-02,B,used", "q3,2027-03-03,C,opened"];

test.each<[string, Sheet, readonly string[], readonly string[], readonly number[]]>([
	["moved", usesSheet, [A, B, C], [C, A, B], [2, 0, 1]],
	["one taken out", usesSheet, [A, B, C], [A, C], [0, 2]],
	["one new", usesSheet, [A, C], [A, B, C], [0, -1, 1]],
	["another text, the same mark", usesSheet, [A, B], [A, "q2,2027-03-09,C,opened"], [0, 1]],
	["without marks, in its place", usesSheet, [A, ",1,B,used", C], [A, ",2,B,used", C], [0, 1, 2]],
	[
		"without marks, less than half the same",
		usesSheet,
		[A, ",1,B,used"],
		[A, ",2,C,used"],
		[0, -1],
	],
	[
		"in two places",
		usesSheet,
		[",1,B,used", A, ",2,C,used"],
		[",3,B,used", A, ",4,C,used"],
		[0, 1, 2],
	],
	["with another mark in its place", usesSheet, [A, "q2,1,B,used"], [A, "q9,1,B,used"], [0, -1]],
])("lines of a log: %s", (_what, sheet, was, now, pairs) => {
	expect([...pairedEdits(sheet, table(...was), table(...now)).ofOther]).toEqual(pairs);
});

test("without marks, as many as there are, each in its place", () => {
	const day = (of: number) => Array.from({ length: 130 }, (_, i) => `,${of},K${i},used`);
	const { ofOther } = pairedEdits(usesSheet, table(A, ...day(1), B), table(A, ...day(2), B));
	expect([...ofOther]).toEqual(Array.from({ length: 132 }, (_, at) => at));
});

test("a row that stands twice is the one before only once", () => {
	const was = table(A);
	const now = { header: was.header, rows: [...was.rows, ...was.rows] };
	const { ofOne, ofOther } = pairedEdits(kitsSheet, was, now);
	expect([[...ofOne], [...ofOther]]).toEqual([[0], [0, -1]]);
});

test("of two rows that say the same the one that is kept is known by being the same", () => {
	const was = table(A, A);
	const now = { header: was.header, rows: was.rows.slice(1) };
	expect([...pairedEdits(undefined, was, now).ofOther]).toEqual([1]);
});

test("of a sheet that takes one row of a name, another name in its place is another row", () => {
	const kits = (...lines: string[]) => tableOf(["kit,kind,status", ...lines].join("\n"));
	const [was, now] = [kits("A,bag set,in_service"), kits("B,bag set,in_service")];
	expect([...pairedEdits(kitsSheet, was, now).ofOther]).toEqual([-1]);
	expect([...pairedEdits(undefined, was, now).ofOther]).toEqual([0]);
});

test("a sheet without marks has none in its second column or in one of that name", () => {
	const [was, now] = [table(A, ",1,B,used"), table(A, ",2,B,used")];
	expect([...pairedEdits(undefined, was, now).ofOther]).toEqual([0, 1]);
	const named = [table("x,1,B,used"), table("y,1,B,used")] as const;
	expect([...pairedEdits(undefined, ...named).ofOther]).toEqual([0]);
});

test("a mark tells lines apart also with spaces around it and its name", () => {
	const header = [" id ", "at", "kit", "what"];
	const spaced = (mark: string, at = "1") => ({ header, rows: [[mark, at, "B", "used"]] });
	expect([...pairedEdits(usesSheet, spaced(" q2 "), spaced("q9")).ofOther]).toEqual([-1]);
	expect([...pairedEdits(usesSheet, spaced(" "), spaced(" ", "2")).ofOther]).toEqual([0]);
});
