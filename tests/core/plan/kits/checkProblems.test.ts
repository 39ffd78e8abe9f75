import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { columnOf } from "../../contentOf.ts";
import { smallUnit } from "../../smallUnit.ts";

const HEADER =
	"checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,relief_opens,suction_holds,note";
/** A passed check of kit B, and the line given: when, which, pieces, clean, and whether the bag refills. */
const withCheck = (line: string) =>
	plan(
		smallUnit({
			"checks.csv": `${HEADER}\n2027-02-28 08:00,B,5,yes,yes,,,,,\n${line},,,,,`,
		}),
	);
const ofChecks = (line: string) => withCheck(line).problems.filter((p) => p.file === "checks.csv");

test.each([
	["a passed one", "2027-02-27 09:00,A,5,yes,yes"],
	["a failed one", "2027-02-27 09:00,A,4,no,no"],
	// record.md, "State of a kit": any failed test, not clean, or damage; one is enough, whatever is blank.
	["one that failed with the pieces not counted", "2027-02-27 09:00,A,,yes,no"],
	["one that was not clean, with nothing else", "2027-02-27 09:00,A,,no,"],
	["one with a piece short and cleanliness not judged", "2027-02-27 09:00,A,4,,"],
	["one of a test that does not apply", "2027-02-27 09:00,A,5,yes,"],
	["one of the plan's last day", "2027-03-07 23:59,A,5,yes,yes"],
	["one without a time", "2027-02-27,A,5,yes,yes"],
])("a finished check is no problem: %s", (_what, line) => {
	expect(ofChecks(line)).toEqual([]);
});

describe("a check that cannot be used is named with its line, and changes nothing", () => {
	test.each([
		[
			"of a kit nobody has",
			"2027-02-27 09:00,Z,4,yes,yes",
			"unknown-kit",
			"kit",
			"Z",
			"error",
			/no kit "Z"/,
		],
		[
			"after the plan",
			"2027-03-08,A,4,yes,yes",
			"check-in-future",
			"checked_at",
			"2027-03-08",
			"error",
			/after the plan ends/,
		],
		[
			"of more pieces than listed",
			"2027-02-27,A,6,yes,yes",
			"too-many-pieces",
			"pieces_counted",
			"6",
			"error",
			/6 pieces were counted for A and its kind lists 5/,
		],
		[
			"with the pieces not counted",
			"2027-02-27,A,,yes,yes",
			"check-not-finished",
			"pieces_counted",
			"",
			"advice",
			/pieces counted is blank/,
		],
		[
			"with cleanliness not judged",
			"2027-02-27,A,5,,yes",
			"check-not-finished",
			"clean",
			"",
			"advice",
			/clean is blank/,
		],
		[
			"without anything",
			"2027-02-27,A,,,",
			"check-not-finished",
			"pieces_counted",
			"",
			"advice",
			/stands as before/,
		],
	])("%s", (_what, line, code, column, received, weight, message) => {
		expect(ofChecks(line)).toMatchObject([
			{ code, column, received, weight, line: 3, message: expect.stringMatching(message) },
		]);
		expect(columnOf(withCheck(line), "kit-register.csv", "state")).toEqual([
			"ready",
			"ready",
			"to_reprocess",
			"out_of_service",
		]);
	});
});

// What is wrong there is said of the kind; whoever checked the kit has nothing to put right.
test.each([
	["whose kind's list cannot be read", "2027-02-27 09:00,E,5,yes,yes"],
	["whose kind cannot be read", "2027-02-27 09:00,F,,,"],
])("a check of a kit %s is no problem of the check", (_what, line) => {
	const made = plan(
		smallUnit({
			"kinds.csv": "kind,piece,count\nbag set,bag,1\nother,bulb,many",
			"kits.csv":
				"kit,kind,status,ready_since,note\nA,bag set,in_service,,\nE,other,in_service,,\nF,,in_service,,",
			"checks.csv": `${HEADER}\n${line},,,,,`,
		}),
	);
	expect(made.problems.filter(({ file }) => file === undefined || file === "checks.csv")).toEqual(
		[],
	);
});

test("a check on the plan's last day counts", () => {
	const made = withCheck("2027-03-07 23:59,A,5,yes,no");
	expect(columnOf(made, "kit-register.csv", "state")[0]).toBe("in_repair");
});

test("more pieces than listed and a failed test: the count is wrong, and the failure counts", () => {
	const line = "2027-02-28 09:00,A,6,yes,no";
	expect(ofChecks(line)).toMatchObject([
		{ code: "too-many-pieces", message: expect.stringMatching(/That the check failed counts/) },
	]);
	expect(columnOf(withCheck(line), "kit-register.csv", "state")[0]).toBe("in_repair");
});

test.each([
	["a count below 0", "2027-02-27,A,-1,yes,yes", "pieces_counted"],
	["neither yes nor no", "2027-02-27,A,5,perhaps,yes", "clean"],
	["a date that is none", "2027-02-30,A,5,yes,yes", "checked_at"],
])("%s is a cell to put right", (_what, line, column) => {
	expect(ofChecks(line)).toMatchObject([{ code: "bad-cell", column, line: 3 }]);
});
