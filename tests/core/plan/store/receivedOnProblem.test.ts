import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { contentOf } from "../../contentOf.ts";
import { problemCodes } from "../../planCells.ts";
import { smallUnit } from "../../smallUnit.ts";

// The plan goes from 1 to 7 March 2027. The liquid has 35 g/L on its label; the powder 70 %.
function planOf(lot: string, today?: string) {
	const made = plan(
		smallUnit({
			"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
				${lot}`,
		}),
		today,
	);
	const codes = problemCodes(made, "error").filter((code) => code === "received-in-future");
	return { codes, strengths: contentOf(made, "strength.csv", "lot", "strength_today") };
}

// methods.md 2: a day that is a slip is a problem, and nothing is measured out from the lot; a
// liquid is as old as it says (calculations 5), and by a day to come it would be fresh.
test.each([
	["on the plan's last day", "liquid,L,9,,2027-03-07,,", undefined, [], 3.5],
	["on a day to come", "liquid,L,9,,2027-12-07,,", undefined, ["received-in-future"], undefined],
	["on the clock's day, after the plan", "liquid,L,9,,2027-03-09,,", "2027-03-09", [], 3.5],
	[
		"on a day to come, and made on a known one",
		"liquid,L,9,2027-02-01,2027-12-07,,",
		undefined,
		["received-in-future"],
		3.5,
	],
])("received %s", (_what, lot, today, codes, strength) => {
	const found = planOf(lot, today);
	expect(found.codes).toEqual(codes);
	expect(found.strengths.find(([name]) => name === "L")).toEqual(["L", strength]);
});

test("of any item", () => {
	expect(planOf("gauze squares,G,9,,2027-12-07,,").codes).toEqual(["received-in-future"]);
});
