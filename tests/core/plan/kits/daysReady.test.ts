import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { unitWith } from "../../smallUnit.ts";
import { HEADER, pass, registerOf, USES } from "./recordedUnit.ts";

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
		["2027-03-11", "2027-03-03", 7, "to_reprocess", "2027-03-10"],
		["2027-03-01", "2027-02-22", 7, "ready", "2027-03-01"],
		["2027-03-01", "2027-02-21", 7, "to_reprocess", "2027-02-28"],
		["2028-03-01", "2028-02-23", 7, "ready", "2028-03-01"],
		["2028-03-01", "2028-02-22", 7, "to_reprocess", "2028-02-29"],
		["2028-01-03", "2027-12-31", 3, "ready", "2028-01-03"],
		["2027-03-28", "2027-03-25", 2.5, "to_reprocess", "2027-03-27"],
	])("on %s, ready since %s for %d days: %s until %s", (start, since, life, state, until) => {
		// It counts among the kits in service: it goes through the next round.
		expect(stands(start, since, life)).toEqual([state, until, "yes"]);
	});

	test.each([
		["", "ready only until 2027-02-26; what happened since is not recorded"],
		["2027-02-23 08:00,B,used,,", "ready only until 2027-02-26"],
		["2027-02-22 08:00,B,used,,", "ready only until 2027-02-26"],
		[
			"2027-02-21 08:00,B,used,,",
			"ready only until 2027-02-26; what happened since is not recorded",
		],
		["2027-02-25 08:00,A,used,,", "used"],
		["2027-02-25 08:00,A,opened,,", "opened"],
	])("%s: not ready because %s", (use, reason) => {
		const made = plan(
			unitWith(
				{ plan_days: 1 },
				{
					"kits.csv": `${kits("2027-02-19")}\nB,bag set,in_service,,`,
					"uses.csv": `${USES}\n${use}`,
				},
			),
		);
		expect(registerOf(made, "A", "reason", "recorded")).toEqual([
			reason,
			/not recorded/.test(reason) ? "no" : "yes",
		]);
	});

	test("a check never makes them more", () => {
		const checks = {
			"checks.csv": [HEADER, pass("2027-02-28"), pass("2027-02-28 10:00", "A", "before_use")].join(
				"\n",
			),
		};
		expect(stands("2027-03-01", "2027-02-20", 7, checks)).toEqual([
			"to_reprocess",
			"2027-02-27",
			"yes",
		]);
	});

	test("a kit never disinfected is to reprocess, and counts", () => {
		expect(stands("2027-03-01", "")).toEqual(["to_reprocess", "", "yes"]);
	});
});
