import { expect, test } from "vitest";
import { givenUnits } from "../../../../src/ui/subjects/units/givenUnits.ts";

const given = (...paths: string[]) =>
	paths.map((path) => ({ path, file: new File([], path.split("/").at(-1) as string) }));

test.each<[name: string, paths: string[], units: string[]]>([
	[
		"zips and spreadsheets are a workbook each",
		["b.zip", "a.xlsx", "c.ods"],
		["a.xlsx workbook 1", "b.zip workbook 1", "c.ods workbook 1"],
	],
	[
		"the sheets of a folder with a unit's settings are one workbook, in folders below too",
		["D/North/A/unit.csv", "D/North/A/births.csv", "D/North/A/datapackage.json", "D/B.zip"],
		["D/B.zip workbook 1", "D/North/A workbook 3"],
	],
	[
		"a workbook beside a unit's sheets is another unit",
		["A/unit.csv", "A/births.xlsx", "A/Other.zip", "A/Other.xlsx"],
		["A workbook 2", "A/Other.xlsx workbook 1", "A/Other.zip workbook 1"],
	],
	[
		"orders by themselves, in one folder or in none, are a unit each",
		["order.csv", "order.csv", "O/north.csv", "O/south.csv"],
		["O/north.csv order 1", "O/south.csv order 1", "order.csv order 1", "order.csv order 1"],
	],
	[
		"the sheets of one unit, chosen without their folder",
		["unit.csv", "births.csv"],
		["unit.csv workbook 2"],
	],
	["what is given by itself is answered for", ["photo.jpg"], ["photo.jpg order 1"]],
	[
		"what lies in a folder and is no sheet is nobody's concern",
		["D/photo.jpg", "D/.DS_Store", "D/~$a.xlsx", "__MACOSX/a.zip", "D/a.zip"],
		["D/a.zip workbook 1"],
	],
])("%s", (_, paths, units) => {
	expect(
		givenUnits(given(...paths)).units.map(
			({ path, kind, files }) => `${path} ${kind} ${files.length}`,
		),
	).toEqual(units);
});

test("the district's own tables are no units", () => {
	const { units, names, stock } = givenUnits(
		given("D/Names.csv", "D/district-stock.csv", "D/a.zip"),
	);
	expect([names?.name, stock?.name, units.length]).toEqual(["Names.csv", "district-stock.csv", 1]);
});
