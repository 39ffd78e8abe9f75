import { expect, test } from "vitest";
import { productAdvice } from "../../../../src/core/plan/chlorine/productAdvice.ts";
import { unitFigures } from "../../../../src/core/plan/unitFigures.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { unitWith } from "../../smallUnit.ts";
import { wholeProblems } from "../../wholeProblems.ts";

const FIRST = "2027-03-01";
const LOTS = "item,lot,quantity,made_on,received_on,arrives_on,expires_on";
const PRODUCTS =
	"product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use";

/** What is said of the products: code, file, line and column. */
function said(files: Record<string, string>, settings: Record<string, string | number> = {}) {
	const unit = unitFigures(readWorkbook(unitWith(settings, files)), FIRST, FIRST);
	return wholeProblems(productAdvice(unit, FIRST)).map(({ weight, code, file, line, column }) =>
		[weight, code, file, line, column].join(" "),
	);
}

test.each<[string, Record<string, string>, string[]]>([
	["a lot that can be used", { "lots.csv": `${LOTS}\nliquid,L1,10,2027-01-10,,,` }, []],
	["no lot of it", { "lots.csv": LOTS }, ["advice no-usable-lot lots.csv  lot"]],
	[
		"a lot out of date",
		{ "lots.csv": `${LOTS}\nliquid,L1,10,2027-01-10,,,2027-02-28` },
		["advice no-usable-lot lots.csv  lot"],
	],
	[
		"too little of it for one preparation",
		{ "lots.csv": `${LOTS}\npowder,P1,500,,,,\nliquid,L1,0.5,2027-01-10,,,` },
		["advice lot-in-use lots.csv 3 lot"],
	],
	[
		"none in use, and no lot",
		{
			"lots.csv": LOTS,
			"chlorine.csv": `${PRODUCTS}\nliquid,liquid,3.5,pct_w_v,,0,,no`,
		},
		[],
	],
	[
		"one that the store does not list",
		{
			"lots.csv": `${LOTS}\nliquid,L1,10,2027-01-10,,,`,
			"chlorine.csv": `${PRODUCTS}\nliquid,liquid,3.5,pct_w_v,,0,,yes\ngel,liquid,3,pct_w_v,,0,,no`,
		},
		["advice unknown-item chlorine.csv 3 product"],
	],
])("%s", (_, files, expected) => {
	expect(said(files)).toEqual(expected);
});

test("wet kits that the dose does not count are said once, at the setting", () => {
	const files = { "lots.csv": `${LOTS}\nliquid,L1,10,2027-01-10,,,` };
	const wet = (dose_for_wet_kits: string, carry_in_ml_per_kit: number) =>
		said(files, { dose_for_wet_kits, carry_in_ml_per_kit });
	expect(wet("no", 20)).toEqual(["advice not-dosed-for-wet-kits unit.csv  dose_for_wet_kits"]);
	expect([wet("no", 0), wet("yes", 20)]).toEqual([[], []]);
});
