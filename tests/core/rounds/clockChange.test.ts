import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { contentOf, everything } from "../contentOf.ts";
import { unitWith } from "../smallUnit.ts";

const own = process.env.TZ;
beforeEach(() => {
	process.env.TZ = "UTC";
});
afterEach(() => {
	if (own === undefined) delete process.env.TZ;
	else process.env.TZ = own;
});

const CHECKS =
	"checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,relief_opens,suction_holds,note";
const late = "start,label\n07:00,morning\n23:00,late";
const weekFrom = (start: string) =>
	plan(
		unitWith(
			{ plan_start: start, plan_days: 4, heat_kw: 3 },
			{
				"rounds.csv": late,
				"checks.csv": `${CHECKS}\n${start} 02:30,A,5,yes,,,,,,\n${start} 01:30,A,4,yes,,,,,,`,
			},
		),
	);

/** Zone, a day on which its clocks change, and its minutes behind universal time before and after. */
const changes = [
	["Europe/Paris", "2027-03-28", -60, -120],
	["Europe/Paris", "2027-10-31", -120, -60],
	["America/New_York", "2027-03-14", 300, 240],
	["America/New_York", "2027-11-07", 240, 300],
	["Pacific/Chatham", "2027-04-04", -825, -765],
	["Pacific/Chatham", "2027-09-26", -765, -825],
] as const;

describe("where the clocks of the country change, the plan goes by the ward's wall clock", () => {
	test.each(changes)("%s on %s", (zone, day, before, after) => {
		const dayBefore = new Date(Date.parse(day) - 86_400_000).toISOString().slice(0, 10);
		const expected = everything(weekFrom(dayBefore));
		process.env.TZ = zone;
		// The zone is in force, and the clocks do change on that day.
		expect(new Date(`${day}T00:00`).getTimezoneOffset()).toBe(before);
		expect(new Date(`${day}T23:00`).getTimezoneOffset()).toBe(after);

		const made = weekFrom(dayBefore);
		expect(everything(made)).toEqual(expected);
		const times = contentOf(made, "run-sheet.csv", "date", "starts", "ends");
		const onDay = (date: string) => times.filter(([d]) => d === date).map((row) => row.slice(1));
		expect(onDay(day)).toEqual(onDay(dayBefore));
		expect(onDay(day)).toHaveLength(8);
	});
});
