import { expect, test } from "vitest";
import { acceptedEndings, endingIn } from "../../src/io/fileEndings.ts";

test("a name ends in one of several kinds, in capitals or not, and only there", () => {
	const text = endingIn("text");
	const workbook = endingIn("zip", "spreadsheet", "otherProgram");
	const names = [
		"births.csv",
		"Births.TXT",
		"unit.zip",
		"unit.XLSM",
		"unit.numbers",
		"unit.gsheet",
		"csv",
		"a.csv.b",
	];
	expect(names.filter((name) => text.test(name))).toEqual(["births.csv", "Births.TXT"]);
	expect(names.filter((name) => workbook.test(name))).toEqual([
		"unit.zip",
		"unit.XLSM",
		"unit.numbers",
	]);
});

test("a browser is given them with their points", () => {
	expect(acceptedEndings("zip", "spreadsheet")).toBe(".zip,.xlsx,.xlsm,.ods");
});
