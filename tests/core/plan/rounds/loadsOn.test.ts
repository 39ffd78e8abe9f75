import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { numberIn, rowsOf } from "../../planCells.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

/** A unit whose suction sets are boiled and whose bag sets go into chlorine. */
const litresOf = (bagSets: number, suctionSets: number) => {
	const made = plan(
		smallUnit({
			"kinds.csv": "kind,piece,count\nbag set,bag,1\nsuction set,bulb,1",
			"treatments.csv": "kind,piece,method,note\nsuction set,bulb,boiling,",
			"kind-use.csv": `kind,uses_per_100_births\nbag set,${bagSets}\nsuction set,${suctionSets}`,
			"kits.csv":
				"kit,kind,status,ready_since,note\nA,bag set,in_service,2027-02-28,\nB,suction set,in_service,2027-02-28,",
		}),
	);
	return numberIn(rowsOf(made, "day-plan.csv")[0], "solution_litres_expected");
};

test("solution is mixed for the rounds with kits that go into it, however many others there are", () => {
	const few = litresOf(8, 2);
	expect(few).toBeGreaterThan(1);
	expect(litresOf(8, 40)).toBe(few);
	expect(litresOf(20, 2)).toBeGreaterThan(few ?? 0);
});

test("mixed for wiping alone it goes by the rounds with any kits, not by those that are boiled", () => {
	const wiping = (bagSets: number) => {
		const made = plan(
			unitWith(
				{ wipe_solution_litres: 2, ready_life_days: 60, sterile_life_days: 60 },
				{
					"kinds.csv": "kind,piece,count\nbag set,bag,1\nsuction set,bulb,1",
					"treatments.csv":
						"kind,piece,method,note\nsuction set,bulb,boiling,\nbag set,bag,autoclave,",
					"kind-use.csv": `kind,uses_per_100_births\nbag set,${bagSets}\nsuction set,2`,
				},
			),
		);
		return numberIn(rowsOf(made, "day-plan.csv")[0], "solution_litres_expected") ?? 0;
	};
	expect(wiping(2)).toBeGreaterThan(0);
	expect(wiping(20)).toBeGreaterThan(2 * wiping(2));
});
