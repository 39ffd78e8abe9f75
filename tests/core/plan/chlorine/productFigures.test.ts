import { expect, test } from "vitest";
import { productFigures, productInUse } from "../../../../src/core/plan/chlorine/productFigures.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";
import { wholeProblems } from "../../wholeProblems.ts";

const HEADER =
	"product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use";
const liquid = (use: string) => `liquid,liquid,3.5,pct_w_v,,0,,${use}`;
const powder = (use: string) => `powder,powder,70,pct_w_w,,,0,${use}`;

/** The product in use, or where and what is wrong. */
function inUse(...rows: string[]): unknown {
	const read = readWorkbook(smallUnit({ "chlorine.csv": [HEADER, ...rows].join("\n") }));
	const found = productInUse(read, productFigures(read));
	if ("row" in found) return found.row.value.product;
	if (found.outcome.ok) return "a product that is none";
	return wholeProblems(found.outcome.problems).map(({ code, file, line, column, received }) =>
		[code, file, line, column, received].join(" "),
	);
}

const none = (received: string) => [`product-in-use chlorine.csv  in_use ${received}`];

test("without a lot what a preparation lacks is said of the label", () => {
	const made = plan(unitWith({ target_strength_pct: 5 }, { "lots.csv": null }));
	const weak = made.problems.filter(({ file }) => file === "chlorine.csv");
	expect(weak).toMatchObject([{ line: 2, column: "strength", code: "too-weak" }]);
});

test("a label that is not enough is named by its line", () => {
	const byWeight = [HEADER, powder("no"), "liquid,liquid,3.5,pct_w_w,,0,,yes"].join("\n");
	const { problems } = plan(smallUnit({ "chlorine.csv": byWeight }));
	expect(problems.filter(({ code }) => code === "density-missing")).toMatchObject([
		{ file: "chlorine.csv", line: 3, column: "strength" },
	]);
});

test.each<[string, string[], unknown]>([
	["the one that is marked", [liquid("no"), powder("yes")], "powder"],
	["two are marked", [liquid("yes"), powder("yes")], none("2 products in use")],
	["none is marked", [liquid("no")], none("0 products in use")],
	[
		"one is marked beside a row that nobody can read",
		[liquid("yes"), powder("perhaps")],
		["bad-cell chlorine.csv 3 in_use perhaps"],
	],
])("the product in use: %s", (_, rows, expected) => {
	expect(inUse(...rows)).toEqual(expected);
});
