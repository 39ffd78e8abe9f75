import { expect, test } from "vitest";
import { asNote } from "../../../src/core/read/asNote.ts";
import { badCell, beginning, shown, tooManyCells } from "../../../src/core/read/cellProblems.ts";
import { readTable } from "../../../src/core/read/readTable.ts";
import { hoursSheet } from "../../../src/core/sheets/hours.ts";
import { lotsSheet } from "../../../src/core/sheets/lots.ts";
import { LONGEST_NOTE } from "../../../src/core/values/note.ts";

const place = { file: "a.csv", line: 3, column: "x" };
const BABY = "👶";

test("a long text is shown in part, and no half of a letter that takes two", () => {
	const long = "x".repeat(60);
	expect([shown(long), shown(`${long}y`)]).toEqual([long, `${long}…`]);
	expect(beginning(`x${BABY}y`, 2)).toBe("x");
	expect(beginning(`x${BABY}y`, 3)).toBe(`x${BABY}`);
	expect(beginning(`${BABY}y`, 2)).toBe(BABY);
});

test("a note as long as may be stays, and a longer one is cut to that with a remark", () => {
	const longest = "x".repeat(LONGEST_NOTE);
	expect(asNote(longest)).toBe(longest);
	const cut = asNote(`${longest}y`);
	expect(cut).toHaveLength(LONGEST_NOTE);
	expect(cut).toMatch(new RegExp(`^x+… \\(${LONGEST_NOTE + 1} characters in all\\)$`));
});

test("a blank cell is told apart from one that is not understood", () => {
	expect(badCell(place, "Births", " ", "a number").message).toBe(
		"Births: it is blank; allowed is a number.",
	);
	expect(badCell(place, "Births", " two", "a number").message).toBe(
		'Births: " two" was found; allowed is a number.',
	);
});

test("what is beyond the first line is named, where anything stands there", () => {
	expect(tooManyCells(place, ["1", "2", "3", "4"], 2)).toMatchObject({ received: "3, 4" });
	const rows = (...cells: string[]) =>
		readTable(hoursSheet, {
			header: ["hour", "share"],
			rows: [["1", "2", ...cells]],
		}).problems.filter(({ code }) => code === "too-many-cells");
	expect([rows().length, rows("").length, rows("", "x").length]).toEqual([0, 0, 1]);
});

test("the place of what is wrong with a first line is its first line", () => {
	expect(readTable(hoursSheet, { header: [], rows: [] }).problems).toMatchObject([
		{ file: hoursSheet.file, line: 1, column: "", received: "" },
	]);
});

test("rows that stand twice are named by all that tells them apart, and of many only the first lines", () => {
	const read = (times: number) =>
		readTable(lotsSheet, {
			header: ["item", "lot", "quantity"],
			rows: Array.from({ length: times }, () => ["soap", "L1", "1"]),
		}).badRows.map(({ problems }) => problems.at(-1));
	expect(read(2)[0]).toMatchObject({
		code: "doubled-row",
		column: "item",
		received: "soap, L1",
		message: "soap, L1 stands in lines 2 and 3 of lots.csv; keep one of them.",
	});
	expect(read(10)[0]?.message).toContain("lines 2 and 3 and 4");
	expect(read(11)[0]?.message).toContain("in 11 lines of lots.csv, the first of them 2 and 3");
});
