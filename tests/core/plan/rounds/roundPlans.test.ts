import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { codesOf, rowsOf, valueIn } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

/** When the steps of the first round end, or why that is not known; the second round begins at the time given. */
function endsOf(second: string): unknown[] {
	const files = {
		"rounds.csv": `start,label\n07:00,a\n${second},b`,
		"kits.csv": "kit,kind,status,ready_since,note\nA,bag set,in_service,,\nB,bag set,in_service,,",
	};
	const made = plan(unitWith({ plan_days: 1 }, files));
	const rows = rowsOf(made, "run-sheet.csv").filter(({ round }) => valueIn(round) === "a");
	return rows.map(({ ends }) => (ends?.outcome.ok ? valueIn(ends) : codesOf(ends).join()));
}

// For both kits there are: 20 + 2 × 50 + 20 + 20 = 160 minutes.
test("a round ends by the minute at which the next one begins, or it is too long", () => {
	expect(endsOf("09:40")).toEqual(["07:20", "09:00", "09:20", "09:40"]);
	expect(endsOf("09:39")).toEqual(["round-too-long"]);
});
