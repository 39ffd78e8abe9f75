import { expect, test } from "vitest";
import { problemsOf } from "../../../../src/core/outcome.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import { columnOf } from "../../contentOf.ts";
import { rowsOf } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

const YEARS_AGO = "2021-01-01";
const LATELY = "2027-02-20";

test.each<[string, string, string, string[]]>([
	["both are strong", LATELY, LATELY, ["A", "B"]],
	["the first has faded", YEARS_AGO, LATELY, ["B"]],
	["both have faded: the one to use first says so", YEARS_AGO, YEARS_AGO, ["A"]],
])("of two lots on the mixing sheet: %s", (_, first, second, lots) => {
	const made = plan(
		unitWith(
			{ plan_days: 1 },
			{
				"chlorine.csv": `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
					liquid,liquid,3.5,pct_w_v,,5,,yes`,
				"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
					liquid,A,10,${first},,,2027-05-01
					liquid,B,10,${second},,,2027-06-01`,
			},
		),
	);
	expect(columnOf(made, "mixing.csv", "lot")).toEqual(lots);
	expect(columnOf(made, "mixing-days.csv", "lot")).toEqual(lots.slice(0, 1));
	const weakest = rowsOf(made, "mixing.csv")[0]?.strength_made_pct;
	expect(problemsOf(weakest?.outcome as never)).toMatchObject(
		second === LATELY ? [] : [{ code: "too-weak", file: "lots.csv", line: 2, column: "lot" }],
	);
});
