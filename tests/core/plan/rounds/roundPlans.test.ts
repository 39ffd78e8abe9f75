import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { contentOf } from "../../contentOf.ts";
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

test.each([
	["liquid", ["mix 07:00"]],
	["powder", ["mix; let it settle, and use only the clear liquid 06:55"]],
])("%s is mixed in time to settle before the next step, where it has to", (used, mixed) => {
	const product = (form: string) =>
		`${form},${form},50,pct_w_w,1.1,0,0,${form === used ? "yes" : "no"}`;
	const files = {
		"chlorine.csv": `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use\n${product("liquid")}\n${product("powder")}`,
		"steps.csv":
			"step,basis,minutes,hands_on,method\nmix,round,10,yes,chlorine\nwash,kit,10,yes,\nsoak,load,20,no,",
	};
	const made = plan(unitWith({ plan_days: 1, settle_minutes: 25 }, files));
	const rows = contentOf(made, "run-sheet.csv", "round", "step", "starts");
	expect(
		rows.flatMap(([round, ...step]) => (round === "morning" ? [step.join(" ")] : [])).slice(0, 1),
	).toEqual(mixed);
});
