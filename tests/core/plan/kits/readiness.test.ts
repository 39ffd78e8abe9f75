import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { contentOf } from "../../contentOf.ts";
import { numberIn, problemCodes, rowsOf } from "../../planCells.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

const HEADER =
	"checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,relief_opens,suction_holds,note";
const withChecks = (...lines: string[]) =>
	plan(smallUnit({ "checks.csv": [HEADER, ...lines].join("\n") }));
const registerOf = (made: ReturnType<typeof plan>, kit: string, ...columns: string[]) =>
	contentOf(made, "kit-register.csv", "kit", ...columns)
		.find(([name]) => name === kit)
		?.slice(1);
const inService = (made: ReturnType<typeof plan>) =>
	numberIn(rowsOf(made, "day-plan.csv")[0], "kits_in_service");

const pass = (at: string, kit = "A") => `${at},${kit},5,yes,yes,yes,yes,yes,,`;

describe("by its latest finished check", () => {
	test.each([
		["no check: the register's word", [], "ready", "yes", 3],
		["passed", [pass("2027-02-27 09:00")], "ready", "yes", 3],
		["a piece missing", ["2027-02-27 09:00,A,4,yes,yes,yes,yes,yes,,"], "incomplete", "no", 2],
		["a failed test", ["2027-02-27 09:00,A,5,yes,yes,no,yes,yes,,"], "repair", "no", 2],
		["not clean", ["2027-02-27 09:00,A,5,no,yes,yes,yes,yes,,"], "to reprocess", "no", 2],
		[
			"failed, then passed",
			["2027-02-27 09:00,A,5,yes,no,,,,,", pass("2027-02-27 11:00")],
			"ready",
			"yes",
			3,
		],
		[
			"passed, then failed, in whatever order they are listed",
			["2027-02-27 11:00,A,5,yes,no,,,,,", pass("2027-02-27 09:00")],
			"repair",
			"no",
			2,
		],
		[
			"failed on the last day, passed the day after, past midnight",
			["2027-02-28 23:59,A,4,yes,,,,,,", pass("2027-03-01 00:01")],
			"ready",
			"yes",
			3,
		],
		[
			"failed, then a check that was not finished",
			["2027-02-27 09:00,A,4,yes,,,,,,", "2027-02-28 09:00,A,,yes,,,,,,"],
			"incomplete",
			"no",
			2,
		],
		["another kit's check", ["2027-02-27 09:00,B,4,yes,,,,,,"], "ready", "yes", 2],
		["dated after the plan", ["2027-03-08 09:00,A,4,yes,,,,,,"], "ready", "yes", 3],
		["dated on its last day", ["2027-03-07 09:00,A,4,yes,,,,,,"], "incomplete", "no", 2],
		[
			"an old check, and disinfected again since",
			["2027-02-20 09:00,A,5,yes,yes,yes,yes,yes,,"],
			"ready",
			"yes",
			3,
		],
	])("%s", (_what, checks, state, counts, kits) => {
		const made = withChecks(...checks);
		expect(registerOf(made, "A", "state", "counts")).toEqual([state, counts]);
		expect(inService(made)).toBe(kits);
	});

	test("a kit out of service stays so, whatever its check says", () => {
		expect(
			registerOf(withChecks(pass("2027-02-28", "D")), "D", "state", "counts", "reason"),
		).toEqual(["out of service", "no", "torn mask"]);
	});

	test("what is wrong is said, and how many pieces are missing", () => {
		const made = withChecks("2027-02-27 09:00,A,3,yes,,,,,,");
		expect(
			registerOf(made, "A", "missing", "reason", "ready_since", "ready_until", "last_checked"),
		).toEqual([2, "2 of 5 pieces missing", "", "", "2027-02-27 09:00"]);
	});
});

describe("days a kit stays ready", () => {
	const kits = (since: string) =>
		`kit,kind,status,ready_since,note\nA,bag set,in_service,${since},`;
	const stands = (start: string, since: string, life = 7, changes: Record<string, string> = {}) =>
		registerOf(
			plan(
				unitWith(
					{ plan_start: start, ready_life_days: life },
					{ "kits.csv": kits(since), ...changes },
				),
			),
			"A",
			"state",
			"ready_until",
			"counts",
		);

	test.each([
		["2027-03-10", "2027-03-03", 7, "ready", "2027-03-10"],
		["2027-03-11", "2027-03-03", 7, "overdue", "2027-03-10"],
		["2027-03-01", "2027-02-22", 7, "ready", "2027-03-01"],
		["2027-03-01", "2027-02-21", 7, "overdue", "2027-02-28"],
		["2028-03-01", "2028-02-23", 7, "ready", "2028-03-01"],
		["2028-03-01", "2028-02-22", 7, "overdue", "2028-02-29"],
		["2028-01-03", "2027-12-31", 3, "ready", "2028-01-03"],
		["2027-03-28", "2027-03-25", 2.5, "overdue", "2027-03-27"],
	])("on %s, ready since %s for %d days: %s until %s", (start, since, life, state, until) => {
		// Without a check on record the register's word stands: it counts, and goes through a round.
		expect(stands(start, since, life)).toEqual([state, until, "yes"]);
	});

	test("an overdue kit with a check on record is not counted, until a later one passes", () => {
		const checks = (...dates: string[]) => ({
			"checks.csv": [HEADER, ...dates.map((date) => pass(date))].join("\n"),
		});
		expect(stands("2027-03-01", "2027-02-20", 7, checks("2027-02-20"))).toEqual([
			"overdue",
			"2027-02-27",
			"no",
		]);
		expect(stands("2027-03-01", "2027-02-20", 7, checks("2027-02-20", "2027-02-28"))).toEqual([
			"ready",
			"2027-03-07",
			"yes",
		]);
	});

	test("a kit never disinfected is to reprocess, and counts", () => {
		expect(stands("2027-03-01", "")).toEqual(["to reprocess", "", "yes"]);
	});
});

test("with a kit out, expiries, risk and advice follow; with a passed check all is as before", () => {
	const whole = plan(smallUnit());
	const out = withChecks("2027-02-27 09:00,A,4,yes,,,,,,");
	const back = withChecks("2027-02-27 09:00,A,4,yes,,,,,,", pass("2027-02-27 10:00"));
	const expiries = (made: ReturnType<typeof plan>) =>
		numberIn(rowsOf(made, "day-plan.csv")[0], "kits_expired_expected");
	// Two kits and three kits, 0.6 uses a day, ready for 7 days.
	expectWithin(expiries(out), 0.0409847, 5e-8, "kits/day");
	expectWithin(expiries(whole), 0.100482, 5e-7, "kits/day");
	expectWithin(expiries(back), 0.100482, 5e-7, "kits/day");

	expect(problemCodes(out)).toEqual(expect.arrayContaining(["too-few-kits", "kit-left-out"]));
	for (const made of [whole, back])
		expect(problemCodes(made).filter((code) => /kit/.test(code))).toEqual([]);
	expect(out.problems.find((p) => p.code === "kit-left-out")).toMatchObject({
		weight: "advice",
		file: "kits.csv",
		line: 2,
		received: "incomplete",
		message:
			"Kit A is not counted: 1 of 5 pieces missing. Find or order what is missing, then check it again.",
	});
	expect(out.problems.find((p) => p.code === "too-few-kits")?.received).toBe("kits in service: 2");
	expect(numberIn(rowsOf(out, "levers.csv")[0], "kits")).toBe(2);
	expect(out.made).toBe(true);
});
