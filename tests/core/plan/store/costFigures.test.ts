import { expect, test } from "vitest";
import { valueIn } from "../../../../src/core/outcome.ts";
import { preparationInUse } from "../../../../src/core/plan/chlorine/lotPreparation.ts";
import { ruleChanges } from "../../../../src/core/plan/store/costFigures.ts";
import { unitFigures } from "../../../../src/core/plan/unitFigures.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { unitWith } from "../../smallUnit.ts";

const FIRST = "2027-03-01";
const PRODUCTS =
	"product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use";
const changesOf = (...of: Parameters<typeof unitWith>) =>
	ruleChanges(unitFigures(readWorkbook(unitWith(...of)), FIRST, FIRST));

const others = ["With powder", "With tablets"];

test.each<[string, Parameters<typeof unitWith>, string[]]>([
	[
		"made for each round",
		[{ solution_made: "each_round" }],
		[...others, "Solution made once a day"],
	],
	["made once a day", [{ solution_made: "each_day" }], [...others, "Solution made for each round"]],
	["made as nobody can read", [{ solution_made: "often" }], others],
	[
		"with no product in use",
		[{}, { "chlorine.csv": `${PRODUCTS}\nliquid,liquid,3.5,pct_w_v,,0,,no` }],
		["Solution made once a day"],
	],
])("what could be done otherwise, %s", (_, of, names) => {
	expect(changesOf(...of).map(({ name }) => String(name))).toEqual(names);
});

test("each is the unit with that one thing changed", () => {
	const [powder, , daily] = changesOf({ solution_made: "each_round" });
	expect(powder?.unit.productInUse).toMatchObject({ row: { value: { product: "powder" } } });
	expect(powder && valueIn(preparationInUse(powder.unit, FIRST))).toMatchObject({ measure: "g" });
	expect(daily && valueIn(daily.unit.read.settings.solution_made)).toBe("each_day");
	expect(daily?.unit.productInUse).toMatchObject({ row: { value: { product: "liquid" } } });
});
