import { expect, test } from "vitest";
import { textsOf } from "../../../src/core/read/textsOf.ts";
import { birthsSheet } from "../../../src/core/sheets/births.ts";

const short = ["2027-03-01"];
const table = { header: ["date", "own"], rows: [short, ["2027-03-02", "x", "beyond"]] };
const texts = textsOf({ tables: { [birthsSheet.file]: table } }, birthsSheet);

test("columns that the file lacks stand behind its own", () => {
	expect(texts.header).toEqual(["date", "own", "births", "note"]);
	expect(textsOf({ tables: {} }, birthsSheet)).toMatchObject({
		header: ["date", "births", "note"],
		rows: [],
	});
});

test("what a short line does not have is blank, and so is a column that is not there", () => {
	const cells = ["date", "own", "births", "elsewhere"].map((key) => texts.cell(short, key));
	expect(cells).toEqual(["2027-03-01", "", "", ""]);
});

test("a row with some cells replaced keeps the others, also those beyond the header", () => {
	expect(texts.row(short, { births: "8" })).toEqual(["2027-03-01", "", "8", ""]);
	expect(texts.row(undefined, { births: "8" })).toEqual(["", "", "8", ""]);
	const long = ["2027-03-02", "x", "7", "", "beyond"];
	expect(texts.row(long, { own: "y" })).toEqual(["2027-03-02", "y", "7", "", "beyond"]);
});
