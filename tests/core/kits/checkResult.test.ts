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
	purpose: "after_round",
	damage: null,
	checked_by: "",
	id: "",
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

test("a kit that passes everything is fit for use, with nothing to say", () => {
	expect(checked({})).toEqual({ found: "passed", missing: 0, reason: "" });
});

test("where nobody knows how many pieces it has, a check can fail a kit and not pass it", () => {
	expect(checkResult(passed, undefined)).toBeUndefined();
	expect(checkResult({ ...passed, seal_holds: "no" }, undefined)).toMatchObject({
		found: "in_repair",
		missing: 0,
	});
});

describe("a kit that does not pass is never fit for use", () => {
	test.each([
		["one piece short", { pieces_counted: 11 }, "incomplete", 1, "1 of 12 pieces missing"],
		["nothing counted", { pieces_counted: 0 }, "incomplete", 12, "12 of 12 pieces missing"],
		["not clean", { clean: "no" }, "not_clean", 0, "not clean"],
		[
			"short, failed and dirty",
			{ pieces_counted: 10, seal_holds: "no", clean: "no" },
			"incomplete",
			2,
			"2 of 12 pieces missing",
		],
		[
			"failed and dirty",
			{ seal_holds: "no", clean: "no" },
			"in_repair",
			0,
			"the seal does not hold",
		],
		["damage seen", { damage: "yes" }, "in_repair", 0, "damage was seen"],
	] as const)("%s", (_what, change, found, missing, reason) => {
		expect(checked(change)).toEqual({ found, missing, reason });
	});

	test.each(tests)("%s failed: in repair, and why", (failed) => {
		expect(checked({ [failed]: "no" })).toMatchObject({
			found: "in_repair",
			reason: expect.stringMatching(/does not/),
		});
	});

	test("each test has words of its own", () => {
		expect(new Set(tests.map((failed) => checked({ [failed]: "no" })?.reason)).size).toBe(5);
	});
});

test.each(tests)("a kit to which %s does not apply may be ready", (blank) => {
	expect(checked({ [blank]: null })?.found).toBe("passed");
});

describe("an unfinished check has no result", () => {
	test.each([
		["pieces not counted", { pieces_counted: null }],
		["cleanliness not judged", { clean: null }],
		["more pieces than listed", { pieces_counted: 13 }],
		["nothing looked at", { pieces_counted: null, clean: null }],
	] as const)("%s", (_what, change) => {
		expect(checked(change)).toBeUndefined();
	});
});

describe("one failure takes a kit out, whatever was not looked at any more", () => {
	test.each([
		[
			"a test, the rest blank",
			{ pieces_counted: null, clean: null, valve_moves: "no" },
			"in_repair",
		],
		["a test, more pieces than listed", { pieces_counted: 13, valve_moves: "no" }, "in_repair"],
		["damage, pieces not counted", { pieces_counted: null, damage: "yes" }, "in_repair"],
		["dirt, pieces not counted", { pieces_counted: null, clean: "no" }, "not_clean"],
		["a piece short, cleanliness not judged", { pieces_counted: 11, clean: null }, "incomplete"],
	] as const)("%s", (_what, change, found) => {
		expect(checked(change)?.found).toBe(found);
	});
});
