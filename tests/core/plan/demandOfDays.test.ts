import { expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { codesOf, rowsOf } from "../planCells.ts";
import { unitWith } from "../smallUnit.ts";

/** Of two days why it is not known how many kits are renewed, and how many are used. */
function waits(...births: string[]): string[] {
	const days = births.map((count, i) => `2027-03-0${i + 1},${count},`);
	const files = { "births.csv": ["date,births,note", ...days].join("\n") };
	return rowsOf(plan(unitWith({ plan_days: 2 }, files)), "day-plan.csv").map((day) =>
		[day.kits_expired_expected, day.kits_used_expected].map((cell) => codesOf(cell)).join(" / "),
	);
}

test.each([
	["6", "7", [" / ", " / "]],
	["two", "7", [" / bad-cell", " / "]],
	["two", "three", ["bad-cell / bad-cell", "bad-cell / bad-cell"]],
])("kits renewed go by the days that can be read, births %s and %s", (first, second, wanted) => {
	expect(waits(first, second)).toEqual(wanted);
});
