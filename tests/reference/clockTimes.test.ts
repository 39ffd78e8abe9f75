import { expect, test } from "vitest";
import { plan } from "../../src/core/plan/plan.ts";
import { kitState } from "../../src/core/record/kitState.ts";
import { soakMinutes } from "../../src/core/record/soakMinutes.ts";
import { settings } from "../../src/core/sheets/settings.ts";
import { columnOf, contentOf } from "../core/contentOf.ts";
import { check, round } from "../core/record/kitEvents.ts";
import { smallUnit, unitWith } from "../core/smallUnit.ts";

// C13 of the notes: 20 minutes at least, A Book for Midwives, 2010, p. 64 (seen); exact.
test("a soak from 10:15 comes out at 10:35 at the earliest", () => {
	const soak = settings.soak_minutes.fallback as number;
	const made = plan(
		smallUnit({
			"rounds.csv": "start,label\n10:15,morning",
			"steps.csv": `step,basis,minutes,hands_on\nsoak,load,${soak},no`,
		}),
	);
	expect(contentOf(made, "run-sheet.csv", "step", "starts", "ends")[0]).toEqual([
		"soak",
		"10:15",
		"10:35",
	]);
	const [into, out] = [10 * 60 + 15, 10 * 60 + 35];
	expect(soakMinutes({ start: into, soak_in: into, soak_out: out })).toBe(soak);
	const outSooner = { start: into, soak_in: into, soak_out: out - 1 };
	expect(soakMinutes(outSooner)).toBeLessThan(soak);
});

// C14: up to one week in a closed, disinfected container, screening reference manual, copy of the
// International Agency for Research on Cancer, p. 130 (seen); exact.
test("a kit disinfected on 3 March may be used by 10 March", () => {
	const life = settings.ready_life_days.fallback as number;
	const events = [round("2027-03-03"), check("2027-03-03")];
	expect(kitState(events, "2027-03-10", life)).toMatchObject({
		name: "ready",
		readyUntil: "2027-03-10",
	});
	expect(kitState(events, "2027-03-11", life).name).toBe("to_reprocess");
	const files = { "kits.csv": "kit,kind,status,ready_since\nA,bag set,in_service,2027-03-03" };
	expect(
		columnOf(
			plan(unitWith({ plan_start: "2027-03-04" }, files)),
			"kit-register.csv",
			"ready_until",
		),
	).toEqual(["2027-03-10"]);
});
