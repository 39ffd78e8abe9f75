import { expect, test } from "vitest";
import { districtNamesSheet } from "../../../../src/core/sheets/districtNames.ts";
import { districtStockSheet } from "../../../../src/core/sheets/districtStock.ts";
import { readDistrictText } from "../../../../src/ui/subjects/units/readDistrictText.ts";

const BLEACH = { item: "bleach 3.5", name: "Liquid bleach 3.5 %" };

test.each([
	["typed with commas", "bleach 3.5, Liquid bleach 3.5 %"],
	["pasted from a spreadsheet", "bleach 3.5\tLiquid bleach 3.5 %"],
	["with semicolons", "bleach 3.5;Liquid bleach 3.5 %"],
	["with the columns' names", "item,name\nbleach 3.5,Liquid bleach 3.5 %\n"],
	["with them in another order", "name,item\nLiquid bleach 3.5 %,bleach 3.5\n"],
])("a name %s", (_, text) => {
	const { rows, isRead } = readDistrictText(districtNamesSheet, text);
	expect([rows.rows.map(({ value }) => value), isRead]).toEqual([[BLEACH], true]);
});

test("nothing is no name", () => {
	expect(readDistrictText(districtNamesSheet, " \n")).toMatchObject({ isRead: true, problems: [] });
});

test("the store may leave the measure out", () => {
	const { rows } = readDistrictText(districtStockSheet, "gauze,200\nsoap,3");
	expect(rows.rows.map(({ value }) => [value.item, value.quantity, value.measure])).toEqual([
		["gauze", 200, ""],
		["soap", 3, ""],
	]);
});

test.each([
	["gauze,200\nsoap,many", 2],
	["item,quantity\ngauze,200\nsoap,many", 3],
])("a line that is not understood is named by its place in the text: %j", (text, line) => {
	const { problems, isRead } = readDistrictText(districtStockSheet, text);
	expect([problems[0]?.line, isRead]).toEqual([line, false]);
});
