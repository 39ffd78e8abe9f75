import { describe, expect, test } from "vitest";
import { checkResult } from "../../../src/core/kits/checkResult.ts";
import { headerOf } from "../../../src/core/sheet.ts";
import { type ChecksRow, checksSheet } from "../../../src/core/sheets/checks.ts";

const passed: ChecksRow = {
	checked_at: { date: "2027-03-01", minutes: 0 },
	kit: "A",
	pieces_counted: 12,
	clean: "yes",
	bag_refills: "yes",
	valve_moves: "yes",
	seal_holds: "yes",
	relief_opens: "yes",
	suction_holds: "yes",
	note: "",
};
const checked = (change: Partial<ChecksRow>, listed = 12) =>
	checkResult({ ...passed, ...change }, listed);
const tests = [
	"bag_refills",
	"valve_moves",
	"seal_holds",
	"relief_opens",
	"suction_holds",
] as const;

test("the result is never typed", () => {
	expect(headerOf(checksSheet)).toEqual(Object.keys(passed));
});

test("a kit that passes everything is ready, with nothing to say", () => {
	expect(checked({})).toEqual({ result: "ready", missing: 0, reason: "" });
});

describe("a kit that does not pass is never ready", () => {
	test.each([
		["one piece short", { pieces_counted: 11 }, "incomplete", 1, "1 of 12 pieces missing"],
		["nothing counted", { pieces_counted: 0 }, "incomplete", 12, "12 of 12 pieces missing"],
		["not clean", { clean: "no" }, "reprocess", 0, "not clean"],
		[
			"short, failed and dirty",
			{ pieces_counted: 10, seal_holds: "no", clean: "no" },
			"incomplete",
			2,
			"2 of 12 pieces missing",
		],
		["failed and dirty", { seal_holds: "no", clean: "no" }, "repair", 0, "the seal does not hold"],
	] as const)("%s", (_what, change, result, missing, reason) => {
		expect(checked(change)).toEqual({ result, missing, reason });
	});

	test.each(tests)("%s failed: repair, and why", (failed) => {
		expect(checked({ [failed]: "no" })).toMatchObject({
			result: "repair",
			reason: expect.stringMatching(/does not/),
		});
	});

	test("each test has words of its own", () => {
		expect(new Set(tests.map((failed) => checked({ [failed]: "no" })?.reason)).size).toBe(5);
	});
});

test.each(tests)("a kit to which %s does not apply may be ready", (blank) => {
	expect(checked({ [blank]: null })?.result).toBe("ready");
});

describe("an unfinished check has no result", () => {
	test.each([
		["pieces not counted", { pieces_counted: null }],
		["cleanliness not judged", { clean: null }],
		["more pieces than listed", { pieces_counted: 13 }],
		["unfinished, though a test failed", { clean: null, valve_moves: "no" }],
	] as const)("%s", (_what, change) => {
		expect(checked(change)).toBeUndefined();
	});
});
