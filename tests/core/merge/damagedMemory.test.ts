import { describe, expect, test } from "vitest";
import { bornIn, type Copy, type SheetDescent } from "../../../src/core/merge/descent.ts";
import { isContradictory } from "../../../src/core/merge/isContradictory.ts";
import { mergeCopies } from "../../../src/core/merge/mergeCopies.ts";
import { rootDescent } from "../../../src/core/merge/rootDescent.ts";
import { tableOf } from "../smallUnit.ts";

const KITS = "kits.csv";
const USES = "uses.csv";
const copy = (file: string, ...lines: string[]): Copy => {
	const workbook = { tables: { [file]: tableOf(lines.join("\n")) } };
	return { workbook, descent: rootDescent(workbook) };
};
const linesOf = ({ workbook }: Copy) =>
	Object.values(workbook.tables)
		.flatMap(({ rows }) => rows)
		.map((cells) => cells.join());
/** The same copy, remembering its rows by other numbers of its save. */
const takenFor = (of: Copy, numbers: readonly number[]): Copy => {
	const [[file, sheet] = []] = Object.entries(of.descent.sheets);
	const [save] = of.descent.saves;
	if (!file || !sheet || !save) throw new Error("A workbook without a history has one save.");
	const origins = numbers.map((number) => `${save.id}.${number}`);
	return { ...of, descent: { ...of.descent, sheets: { [file]: { ...sheet, origins } } } };
};
const KITS_THREE = copy(KITS, "kit,note", "A,torn", "B,", "C,torn");
const USES_THREE = copy(
	USES,
	"at,kit,what,id",
	"2027-03-01 01:00,A,used,v",
	"2027-03-01 02:00,B,used,v",
	"2027-03-01 03:00,C,used,w",
);

describe.each([
	["kits", KITS_THREE],
	["uses of one visit", USES_THREE],
])("of %s no line is lost or doubled, and nothing is asked", (_what, whole) => {
	test.each([
		["are others", [9, 10, 11]],
		["are other rows of the same copy", [1, 0, 2]],
		["one is another, the rest is unknown", [1, 9, 10]],
		["two are one", [0, 0, 2]],
		["two are one that is a third", [2, 2, 0]],
		["all are one", [1, 1, 1]],
	])("where by a damaged memory the rows: %s", (_how, numbers) => {
		const damaged = takenFor(whole, numbers);
		for (const [ours, theirs] of [
			[damaged, whole],
			[whole, damaged],
			[damaged, damaged],
		] as const) {
			const together = mergeCopies(ours, theirs);
			expect(linesOf(together)).toEqual(linesOf(whole));
			expect(together.conflicts).toEqual([]);
			const { origins } = Object.values(together.descent.sheets)[0] as SheetDescent;
			expect(new Set(origins).size).toBe(3);
			// It is known by which save, so that it can be kept in a file.
			const saves = new Set(together.descent.saves.map(({ id }) => id));
			expect(origins.every((origin) => saves.has(origin.replace(/\..*/, "")))).toBe(true);
		}
	});
});

test("a line that is taken for another one, which was deleted, is not doubled", () => {
	const [born] = KITS_THREE.descent.saves;
	const [root] = Object.values(KITS_THREE.descent.sheets);
	if (!born || !root) throw new Error("A workbook without a history has one save and its sheet.");
	const [first, second] = root.origins as [string, string];
	const later = { id: "later", at: "", by: "" };
	const table = tableOf("kit,note\nB,\nC,torn");
	const changed = new Map([
		["kit", later.id],
		["note", later.id],
	]);
	const sheet = {
		table,
		origins: [second, first],
		changed: new Map([[first, changed]]),
		gone: new Map([[first, later.id]]),
	};
	const damaged: Copy = {
		workbook: { tables: { [KITS]: table } },
		descent: { saves: [born, later], sheets: { [KITS]: sheet } },
	};
	for (const together of [mergeCopies(KITS_THREE, damaged), mergeCopies(damaged, KITS_THREE)])
		expect(linesOf(together).sort()).toEqual(linesOf(KITS_THREE));
});

test("a row that is not there, and of which nobody says that it was deleted, stays", () => {
	const [root] = Object.values(KITS_THREE.descent.sheets);
	if (!root) throw new Error("A workbook without a history remembers its sheet.");
	const table = tableOf("kit,note\nC,torn");
	const sheet = { ...root, table, origins: root.origins.slice(2) };
	const lacking: Copy = {
		workbook: { tables: { [KITS]: table } },
		descent: { ...KITS_THREE.descent, sheets: { [KITS]: sheet } },
	};
	for (const together of [mergeCopies(KITS_THREE, lacking), mergeCopies(lacking, KITS_THREE)])
		expect(linesOf(together)).toEqual(linesOf(KITS_THREE));
});

test("where one sheet's memory is not believed the others' is, and every row has its save", () => {
	const both = { ...KITS_THREE.workbook.tables, ...USES_THREE.workbook.tables };
	const whole: Copy = { workbook: { tables: both }, descent: rootDescent({ tables: both }) };
	const { [KITS]: kits, [USES]: uses } = whole.descent.sheets;
	if (!kits || !uses) throw new Error("Both sheets are there.");
	const wrong = { ...kits, origins: kits.origins.toReversed() };
	const damaged = {
		...whole,
		descent: { ...whole.descent, sheets: { [KITS]: wrong, [USES]: uses } },
	};
	for (const { descent } of [mergeCopies(whole, damaged), mergeCopies(damaged, whole)]) {
		const saves = new Set(descent.saves.map(({ id }) => id));
		for (const { origins } of Object.values(descent.sheets))
			expect(origins.filter((origin) => !saves.has(bornIn(origin)))).toEqual([]);
		expect(descent.sheets[USES]?.origins).toEqual(uses.origins);
	}
});

test("what two copies say differently is asked, and no deleted line is believed, where a memory is damaged", () => {
	const damaged = takenFor(KITS_THREE, [0, 0, 2]);
	const theirs = copy(KITS, "kit,note", "A,lent", "C,torn", "D,");
	const [sheet] = Object.values(theirs.descent.sheets);
	const [born] = KITS_THREE.descent.saves;
	if (!sheet || !born) throw new Error("A workbook without a history has one save and its sheet.");
	const gone = { ...sheet, gone: new Map([[`${born.id}.1`, "=later"]]) };
	const saves = [born, ...theirs.descent.saves, { id: "=later", at: "", by: "" }];
	const other: Copy = { ...theirs, descent: { saves, sheets: { [KITS]: gone } } };
	const together = mergeCopies(damaged, other);
	expect(linesOf(together)).toEqual(["A,torn", "B,", "C,torn", "D,"]);
	expect(
		together.conflicts.map(({ row, column, ours, theirs }) => [
			row,
			column,
			ours.text,
			theirs.text,
		]),
	).toEqual([["A", "note", "torn", "lent"]]);
});

describe("two memories of a sheet", () => {
	const [root] = Object.values(KITS_THREE.descent.sheets) as [SheetDescent];
	const [first = ""] = root.origins;
	const says = (table: string, column?: string): SheetDescent => ({
		...root,
		table: tableOf(table),
		changed: new Map(column === undefined ? [] : [[first, new Map([[column, "later"]])]]),
	});
	test.each([
		["are the same", "kit,note\nA,torn\nB,\nC,torn", undefined, false],
		["differ in what one says it changed", "kit,note\nA,lent\nB,\nC,torn", "note", false],
		["differ in what nobody changed", "kit,note\nA,lent\nB,\nC,torn", undefined, true],
		["differ in another column than one changed", "kit,note\nA,lent\nB,\nC,torn", "kit", true],
		["differ in another row than one changed", "kit,note\nA,torn\nB,x\nC,torn", "note", true],
		["differ in spaces", "kit,note\nA, torn \nB,\nC,torn", undefined, false],
		["have their columns in another order", "note,kit\ntorn,A\n,B\ntorn,C", undefined, false],
		["differ by a blank column", "kit,note,shelf\nA,torn,\nB,,\nC,torn,", undefined, false],
		["differ by a column that nobody filled", "kit,note,shelf\nA,torn,3", undefined, true],
		[
			"differ by a column that one did fill",
			"kit,note,shelf\nA,torn,3\nB,\nC,torn",
			"shelf",
			false,
		],
		["differ by a cell beyond the header", "kit,note\nA,torn,3\nB,\nC,torn", undefined, true],
	])("%s", (_what, table, column, expected) => {
		const other = says(table, column);
		expect(isContradictory(root, other)).toBe(expected);
		expect(isContradictory(other, root)).toBe(expected);
	});

	test("of which one takes two rows for one", () => {
		const twice = { ...root, origins: [first, first, root.origins[2] ?? ""] };
		expect(isContradictory(root, twice)).toBe(true);
		expect(isContradictory(twice, root)).toBe(true);
		// Also where the other copy has none of its rows.
		const apart = { ...root, origins: ["x.0", "x.1", "x.2"] };
		expect(isContradictory(apart, twice)).toBe(true);
		expect(isContradictory(twice, apart)).toBe(true);
		expect(isContradictory(apart, root)).toBe(false);
	});

	test("of which one says that a row is there and was deleted", () => {
		const gone = (origin: string) => ({ ...root, gone: new Map([[origin, "later"]]) });
		expect(isContradictory(root, gone(first))).toBe(true);
		expect(isContradictory(gone(first), root)).toBe(true);
		expect(isContradictory(root, gone("x.0"))).toBe(false);
	});
});
