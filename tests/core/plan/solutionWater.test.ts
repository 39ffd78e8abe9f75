import { expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { expectWithin } from "../../expectWithin.ts";
import { contentOf } from "../contentOf.ts";
import { numberIn, totalOf } from "../planCells.ts";
import { unitWith } from "../smallUnit.ts";

const madeWith = (water: string) => plan(unitWith({ solution_water: water, heat_kw: 3 }));
const litresOf = (water: string, of: "expected" | "set_aside") => {
	const made = madeWith(water);
	const rounds = numberIn(totalOf(made, "rounds"), of) as number;
	return { rounds, litres: numberIn(totalOf(made, "boiled_litres"), of) as number };
};

test("boiled water for the solution, 5.5 L a preparation, is planned with the rinse water", () => {
	for (const of of ["expected", "set_aside"] as const) {
		const { rounds, litres } = litresOf("boiled", of);
		expectWithin(litres - litresOf("tap", of).litres, 5.5 * rounds, 1e-9, "L");
	}
});

test("each round's fire boils it too, and it is cool when the round begins", () => {
	const fires = (water: string) => contentOf(madeWith(water), "boiling.csv", "litres");
	const litres = (water: string) => fires(water).reduce((sum, [each]) => sum + Number(each), 0);
	expectWithin(litres("boiled") - litres("tap"), 7 * 3 * 5.5, 1e-6, "L");
});
