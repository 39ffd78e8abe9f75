import { join } from "node:path";
import { expect, test } from "vitest";
import { planFiles } from "../../src/cli/planFiles.ts";
import { computedSheets } from "../../src/core/sheets/computedSheets.ts";
import { dataPackage } from "../../src/io/dataPackage.ts";

import { writeCsv } from "../../src/io/writeCsv.ts";
import { readDemo } from "../readDemo.ts";
import { expectGolden } from "./expectGolden.ts";

/** The sample workbook's plan, file by file, as it was last looked at and found right. */
const GOLDEN = "tests/golden/sample";
const read = readDemo();
const { files, problems, made } = planFiles(read, false);

test.each([...computedSheets.map(({ file }) => file), "problems.csv"])("%s", (file) => {
	expectGolden(join(GOLDEN, file), files[file] ?? `the plan has no ${file}`);
});

test("the sample makes a whole plan, without a single error", () => {
	expect(problems.filter(({ weight }) => weight === "error")).toEqual([]);
	expect(made).toBe(true);
});

test.each(Object.entries(read.workbook.tables))(
	"sample %s is written as this project writes it",
	(file, table) => {
		expectGolden(join("sample-csv", file), writeCsv(table));
	},
);

test("the sample's own description is the present one", () => {
	expectGolden("sample-csv/datapackage.json", dataPackage(read.workbook));
});
