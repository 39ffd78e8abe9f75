import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { columnOf } from "../../contentOf.ts";
import { codesOf, rowsOf } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

const masks = (method: string) => ({
	"treatments.csv": `kind,piece,method,note\nbag set,mask,${method},`,
});

// The small unit's soak is 5 L.
test.each([
	["chlorine", "", {}, 5.5],
	["chlorine", "0", {}, 5],
	["chlorine", "2", {}, 7],
	["boiling", "", masks("chlorine"), 5.5],
	["chlorine", "", masks("boiling"), 5.5],
	["boiling", "2", {}, 2],
	["boiling", "", {}, undefined],
	["steam", "", {}, undefined],
	["autoclave", "", masks("single_use"), undefined],
])("by %s, with “%s” for wiping, %o", (method, wipe, treatments, litres) => {
	const made = plan(unitWith({ method, wipe_solution_litres: wipe, plan_days: 1 }, treatments));
	expect(columnOf(made, "mixing-days.csv", "litres")[0]).toBe(litres);
	expect(columnOf(made, "mixing.csv", "litres")[0]).toBe(litres);
});

test("where nobody can read how pieces are treated they wait, whatever is kept for wiping", () => {
	const made = plan(
		unitWith({ method: "boiling", wipe_solution_litres: 2, plan_days: 1 }, masks("hot water")),
	);
	expect(codesOf(rowsOf(made, "mixing-days.csv")[0]?.litres)).toEqual(["bad-cell"]);
});
