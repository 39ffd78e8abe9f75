import { expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { columnOf } from "../contentOf.ts";
import { unitWith } from "../smallUnit.ts";

const holdsOf = (settings: Record<string, string | number>) =>
	new Set(
		columnOf(
			plan(unitWith({ heat_kw: 3, births_per_day: 5, ...settings })),
			"boiling.csv",
			"hold_minutes",
		),
	);

// The contract (calculations.md 6): blank is 1 minute, and 3 above 2,000 m. No body draws the line just there: CDC
// says 3 minutes above 6,500 feet (1,981 m), EPA above 5,000 feet (1,524 m); see tests/reference/boilHold.test.ts.
test.each([
	["blank, at the sea", { altitude_m: 0 }, 1],
	["blank, at 2,000 m", { altitude_m: 2000 }, 1],
	["blank, above 2,000 m", { altitude_m: 2001 }, 3],
	["typed, above 2,000 m: the setting wins", { altitude_m: 2400, boil_hold_minutes: 20 }, 20],
	["typed as 0", { altitude_m: 2400, boil_hold_minutes: 0 }, 0],
])("%s", (_, settings, minutes) => {
	expect(holdsOf(settings)).toEqual(new Set([minutes]));
});
