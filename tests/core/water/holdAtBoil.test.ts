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

// CDC, "Making water safe in an emergency": 1 minute, 3 above 6,500 feet (1,981 m); read in the notes as 2,000 m.
test.each([
	["blank, at the sea", { altitude_m: 0 }, 1],
	["blank, at 2,000 m", { altitude_m: 2000 }, 1],
	["blank, above 2,000 m", { altitude_m: 2001 }, 3],
	["typed, above 2,000 m: the setting wins", { altitude_m: 2400, boil_hold_minutes: 20 }, 20],
	["typed as 0", { altitude_m: 2400, boil_hold_minutes: 0 }, 0],
])("%s", (_, settings, minutes) => {
	expect(holdsOf(settings)).toEqual(new Set([minutes]));
});
