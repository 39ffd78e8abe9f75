import { expect, test } from "vitest";
import { conflictProblem, saidWords, twoFiles } from "../../../src/core/merge/conflictProblem.ts";
import { rowName } from "../../../src/core/merge/rowName.ts";
import { journalSheet } from "../../../src/core/sheets/journal.ts";
import { usesSheet } from "../../../src/core/sheets/uses.ts";

test.each([
	[{ text: "8" }, "“8”"],
	[{ text: " " }, "blank"],
	[{ text: undefined }, "deleted"],
	[{ text: "8", save: { by: "Amina", at: "2027-03-01T10:20" } }, "“8” (Amina, 2027-03-01 10:20)"],
	[{ text: "8", save: { by: "", at: "2027-03-01T10:20" } }, "“8” (2027-03-01 10:20)"],
] as const)("what a copy says: %o is %s", (said, words) => {
	expect(saidWords(said as Parameters<typeof saidWords>[0])).toBe(words);
});

test("a conflict is of a cell, or of a whole row that the other copy deleted", () => {
	const conflict = {
		file: "births.csv",
		line: 3,
		column: "births",
		row: "2027-03-02",
		ours: { text: "8" },
		theirs: { text: "9" },
	} as Parameters<typeof conflictProblem>[0];
	expect(conflictProblem(conflict)).toMatchObject({
		file: "births.csv",
		line: 3,
		column: "births",
		weight: "error",
		code: "conflict",
		received: "9",
		message: expect.stringMatching(/^births.csv, 2027-03-02, Births: both .*“8”.*“9”/),
	});
	// Without a state that both come from, one of them may never have touched it.
	expect(conflictProblem({ ...conflict, unsure: true })).toMatchObject({
		code: "conflict",
		message: expect.stringMatching(
			/^births.csv, 2027-03-02, Births: the two copies differ, .*“8”.*“9”/,
		),
	});
	const gone = { ...conflict, column: "", theirs: { text: undefined } } as typeof conflict;
	expect(conflictProblem(gone)).toMatchObject({
		received: "",
		message: expect.stringMatching(/^births.csv, 2027-03-02: one .*“8”.*deleted/),
	});
	expect(conflictProblem({ ...conflict, column: "own" }).message).toContain(
		"2027-03-02, own: both",
	);
	expect(conflictProblem({ ...conflict, file: "letters.csv" }).message).toContain(
		"letters.csv, 2027-03-02, births: both",
	);
});

test("two files of one name that belong to no workbook are a conflict of the file", () => {
	expect(twoFiles("letter.txt")).toMatchObject({
		file: "letter.txt",
		line: null,
		column: "",
		weight: "error",
		code: "conflict",
		received: "letter.txt",
		message: expect.stringMatching(/^letter.txt is not part of a workbook,.* Ours was kept/),
	});
});

test("a row is named by what tells it apart, else by its first texts, and never by its mark", () => {
	const columns = ["id", "day", "item", "lot", "entry", "quantity", "note"];
	const cells = ["q1", " 2027-03-01 ", "gauze", "", "issue", "4", "for Monday"];
	const name = (sheet: Parameters<typeof rowName>[0]) => rowName(sheet)(columns, cells);
	expect(name(undefined)).toMatch(/^2027-03-01, gauze, issue/);
	expect(name(journalSheet)).toMatch(/^2027-03-01, gauze/);
	expect(rowName(usesSheet)(["id", "at", "kit"], ["q1", "2027-03-01 10:00"])).toBe(
		"2027-03-01 10:00",
	);
});
