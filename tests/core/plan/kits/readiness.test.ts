import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { numberIn, problemCodes, rowsOf } from "../../planCells.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";
import { HEADER, pass, ROUNDS, registerOf, withRecord } from "./recordedUnit.ts";

const inService = (made: ReturnType<typeof plan>) =>
	numberIn(rowsOf(made, "day-plan.csv")[0], "kits_in_service");
const SHORT = "A,4,yes,yes,yes,yes,yes,,";
const FAILED = "A,5,yes,yes,no,yes,yes,,";
const DIRTY = "A,5,no,yes,yes,yes,yes,,";

test("what is written of the plan's last day counts", () => {
	const last = "2027-03-07";
	const state = (record: Parameters<typeof withRecord>[0]) =>
		registerOf(withRecord(record), "A", "state", "ready_since");
	expect(state({ uses: [`${last} 09:00,A,used,,`] })).toEqual(["to_reprocess", ""]);
	expect(state({ rounds: [`${last},10:00,11:30,A,no`], checks: [pass(`${last} 12:00`)] })).toEqual([
		"ready",
		last,
	]);
});

test("of checks at one minute the one written last is the kit's last", () => {
	const checks = [`2027-02-28 09:00,${SHORT}`, pass("2027-02-28 09:00")];
	expect(registerOf(withRecord({ checks }), "A", "missing")).toEqual([null]);
	expect(registerOf(withRecord({ checks: checks.reverse() }), "A", "missing")).toEqual([1]);
});

test("a round written down for the day takes the place of the check that stood for it", () => {
	const rounds = ["2027-02-28,10:00,11:30,C,no"];
	const state = (time: string, done = rounds) => {
		const checks = [pass(`2027-02-28 ${time}`, "C", "in_place_of_round")];
		return registerOf(withRecord({ checks, rounds: done }), "C", "state");
	};
	expect(state("09:00", [])).toEqual(["ready"]);
	// It is a check of that round: before it, it says nothing of it; during it, it is its own.
	expect(state("09:00")).toEqual(["to_reprocess"]);
	expect(state("11:00")).toEqual(["ready"]);
});

test("rounds alone say that the record is kept", () => {
	const recorded = (day: string) =>
		registerOf(withRecord({ rounds: [`${day},10:00,11:30,B,no`] }), "C", "recorded");
	expect(recorded("2027-02-27")).toEqual(["yes"]);
	expect(recorded("2027-02-10")).toEqual(["no"]);
});

describe("by everything that is written down", () => {
	test.each<[string, Parameters<typeof withRecord>[0], string, string, string, number]>([
		["nothing: the register's word", {}, "ready", "2027-03-06", "yes", 3],
		[
			"a check that passed",
			{ checks: [pass("2027-02-28 09:00")] },
			"ready",
			"2027-03-06",
			"yes",
			3,
		],
		["a piece missing", { checks: [`2027-02-28 09:00,${SHORT}`] }, "incomplete", "", "no", 2],
		["a failed test", { checks: [`2027-02-28 09:00,${FAILED}`] }, "in_repair", "", "no", 2],
		["not clean", { checks: [`2027-02-28 09:00,${DIRTY}`] }, "to_reprocess", "", "yes", 3],
		[
			"failed, then passed without a round between",
			{ checks: [`2027-02-28 09:00,${FAILED}`, pass("2027-02-28 11:00")] },
			"in_repair",
			"",
			"no",
			2,
		],
		[
			"failed, through a round, then passed",
			{
				checks: [`2027-02-28 09:00,${FAILED}`, pass("2027-02-28 12:00")],
				rounds: ["2027-02-28,10:00,11:30,A,no"],
			},
			"ready",
			"2027-03-07",
			"yes",
			3,
		],
		[
			"a failed test, then used",
			{ checks: [`2027-02-28 09:00,${FAILED}`], uses: ["2027-02-28 10:00,A,used,,"] },
			"in_repair",
			"",
			"no",
			2,
		],
		[
			"a piece missing, then opened",
			{ checks: [`2027-02-28 09:00,${SHORT}`], uses: ["2027-02-28 10:00,A,opened,,"] },
			"incomplete",
			"",
			"no",
			2,
		],
		[
			"used on the day of its round and check, at no time that is known",
			{
				rounds: ["2027-02-28,10:00,11:30,A,no"],
				checks: [pass("2027-02-28 12:00")],
				uses: ["2027-02-28,A,used,,"],
			},
			"to_reprocess",
			"",
			"yes",
			3,
		],
		[
			"failed on the day of its round and check, at no time that is known",
			{
				rounds: ["2027-02-28,10:00,11:30,A,no"],
				checks: [`2027-02-28,${FAILED}`, pass("2027-02-28 12:00")],
			},
			"in_repair",
			"",
			"no",
			2,
		],
		[
			"passed on the day after midnight, at no time that is known, of a round over midnight",
			{ rounds: ["2027-02-27,23:00,00:40,A,no"], checks: [pass("2027-02-28")] },
			"to_reprocess",
			"",
			"yes",
			3,
		],
		[
			"used on the day on which the register lists it as ready: at equal times the unsafe wins",
			{ uses: ["2027-02-27,A,used,,"] },
			"to_reprocess",
			"",
			"yes",
			3,
		],
		[
			"failed, through a round, not tested yet",
			{ checks: [`2027-02-28 09:00,${FAILED}`], rounds: ["2027-02-28,10:00,11:30,A,no"] },
			"to_reprocess",
			"",
			"no",
			2,
		],
		[
			"through a round, not tested yet",
			{ rounds: ["2027-02-28,10:00,11:30,B A,no"] },
			"to_reprocess",
			"",
			"yes",
			3,
		],
		["used since", { uses: ["2027-02-28 23:10,A,used,,"] }, "to_reprocess", "", "yes", 3],
		[
			"a round over midnight: its life begins on the day it ended",
			{
				rounds: ["2027-02-27,23:00,00:40,A,no"],
				checks: [pass("2027-02-28 01:00")],
			},
			"ready",
			"2027-03-07",
			"yes",
			3,
		],
		// record.md, rounds-done: a blank end is the start and the planned minutes; the sample's
		// steps test before the round's last steps.
		[
			"a check during a round whose end nobody wrote down",
			{ rounds: ["2027-02-28,10:00,,A B C,no"], checks: [pass("2027-02-28 11:00")] },
			"ready",
			"2027-03-07",
			"yes",
			3,
		],
		[
			"a check during its round, and used before the round ended",
			{
				rounds: ["2027-02-28,10:00,11:30,A,no"],
				checks: [pass("2027-02-28 11:15")],
				uses: ["2027-02-28 11:20,A,used,,"],
			},
			"to_reprocess",
			"",
			"yes",
			3,
		],
		[
			"a test that failed during its round, and passed in it without another",
			{
				rounds: ["2027-02-28,10:00,11:30,A,no"],
				checks: [`2027-02-28 11:10,${FAILED}`, pass("2027-02-28 11:20")],
			},
			"in_repair",
			"",
			"no",
			2,
		],
		[
			"a check before use",
			{
				rounds: ["2027-02-28,10:00,11:30,A,no"],
				checks: [pass("2027-02-28 12:00", "A", "before_use")],
			},
			"to_reprocess",
			"",
			"yes",
			3,
		],
		[
			"an old check that stands for its round",
			{ checks: [pass("2027-02-28 12:00", "A", "in_place_of_round")] },
			"ready",
			"2027-03-07",
			"yes",
			3,
		],
		[
			"an old check on a day whose round is written down",
			{
				rounds: ["2027-02-28,13:00,14:00,A,no"],
				checks: [pass("2027-02-28 12:00", "A", "in_place_of_round")],
			},
			"to_reprocess",
			"",
			"yes",
			3,
		],
		[
			"a check that was not finished",
			{ checks: [`2027-02-28 08:00,${SHORT}`, "2027-02-28 09:00,A,,yes,,,,,,"] },
			"incomplete",
			"",
			"no",
			2,
		],
		["another kit's use", { uses: ["2027-02-28 23:10,B,used,,"] }, "ready", "2027-03-06", "yes", 3],
		[
			"a round dated after the plan",
			{ rounds: ["2027-03-08,10:00,11:30,A,no"] },
			"ready",
			"2027-03-06",
			"yes",
			3,
		],
		[
			"no kit was ready, and somebody wrote down which one was waited for",
			{ uses: ["2027-02-28 23:10,A,none_ready,,"] },
			"ready",
			"2027-03-06",
			"yes",
			3,
		],
		[
			"dated on the plan's last day",
			{ uses: ["2027-03-07 09:00,A,used,,"] },
			"to_reprocess",
			"",
			"yes",
			3,
		],
		[
			"dated after the plan",
			{ uses: ["2027-03-08 09:00,A,used,,"] },
			"ready",
			"2027-03-06",
			"yes",
			3,
		],
	])("%s", (_what, record, state, until, counts, kits) => {
		const made = withRecord(record);
		expect(registerOf(made, "A", "state", "ready_until", "counts")).toEqual([state, until, counts]);
		expect(inService(made)).toBe(kits);
	});

	test("a round whose end nobody wrote down takes its time, also for marks that nobody knows", () => {
		const usedAtOne = (rounds: string) =>
			registerOf(
				withRecord({ rounds: [rounds], uses: ["2027-02-28 13:00,A,used,,"] }),
				"A",
				"reason",
			);
		expect(usedAtOne("2027-02-28,10:00,,A,no")).toEqual(["used"]);
		expect(usedAtOne("2027-02-28,10:00,,A X Y Z,no")).toEqual(["not yet tested after its round"]);
	});

	test("a kit out of service stays so, whatever its check says", () => {
		expect(
			registerOf(
				withRecord({ checks: [pass("2027-02-28", "D")] }),
				"D",
				"state",
				"counts",
				"reason",
			),
		).toEqual(["out_of_service", "no", "torn mask"]);
	});

	test("what is wrong is said, and how many pieces are missing", () => {
		const made = withRecord({ checks: ["2027-02-28 09:00,A,3,yes,,,,,,"] });
		expect(
			registerOf(made, "A", "missing", "reason", "ready_since", "ready_until", "last_checked"),
		).toEqual([2, "2 of 5 pieces missing", "", "", "2027-02-28 09:00"]);
	});

	test("what a failed check found is said for as long as it keeps the kit out", () => {
		const saidOf = (record: Parameters<typeof withRecord>[0]) => {
			const made = withRecord(record);
			const advice = made.problems.find((p) => p.code === "kit-left-out");
			return [registerOf(made, "A", "reason")?.[0], advice?.message];
		};
		const checks = [`2027-02-28 09:00,${FAILED}`];
		const found = "the valve does not move";
		const later = "It counts again after a later round and the check after it.";
		const waits = `Kit A is not counted: ${found}. ${later}`;
		expect(saidOf({ checks })).toEqual([found, waits]);
		expect(saidOf({ checks, uses: ["2027-02-28 10:00,A,used,,"] })).toEqual([found, waits]);
		expect(saidOf({ checks: [...checks, pass("2027-02-28 11:00")] })).toEqual([found, waits]);
		expect(saidOf({ checks, rounds: ["2027-02-28,10:00,11:30,A,no"] })).toEqual([
			"not yet tested after its round",
			"Kit A is not counted: its check failed, and it has not been tested since its later round. It counts again once the check after that round has passed.",
		]);
	});

	test("a kit found not clean is said to be so, also where a check before use passed since", () => {
		const made = withRecord({
			checks: [`2027-02-28 09:00,${DIRTY}`, pass("2027-02-28 11:00", "A", "before_use")],
		});
		expect(registerOf(made, "A", "state", "reason")).toEqual(["to_reprocess", "not clean"]);
	});

	test("a unit that writes nothing down is not told that its kits were used", () => {
		expect(registerOf(withRecord({}), "C", "state", "reason")).toEqual([
			"to_reprocess",
			"not recorded: used, or not yet disinfected",
		]);
		const kept = withRecord({ uses: ["2027-02-27 23:10,B,used,,"] });
		expect(registerOf(kept, "C", "reason")).toEqual(["used, or not yet disinfected"]);
	});
});

test("with a kit out, expiries, risk and advice follow; after a round and its check all is as before", () => {
	const whole = plan(smallUnit());
	const short = `2027-02-28 09:00,${SHORT}`;
	const out = withRecord({ checks: [short] });
	const back = withRecord({
		checks: [short, pass("2027-02-28 14:00")],
		rounds: ["2027-02-28,11:00,12:30,A,no"],
	});
	const expiries = (made: ReturnType<typeof plan>) =>
		numberIn(rowsOf(made, "day-plan.csv")[0], "kits_expired_expected");
	// Two kits and three kits, 0.6 uses a day, ready for 7 days.
	expectWithin(expiries(out), 0.0348992, 5e-5, "kits/day");
	expectWithin(expiries(whole), 0.092123, 5e-5, "kits/day");
	expect(expiries(back)).toBe(expiries(whole));

	expect(problemCodes(out)).toEqual(expect.arrayContaining(["too-few-kits", "kit-left-out"]));
	// Three kits are one too few where those out of date are missed.
	for (const made of [whole, back])
		expect(problemCodes(made).filter((code) => /kit/.test(code))).toEqual(["too-few-kits"]);
	expect(out.problems.find((p) => p.code === "kit-left-out")).toMatchObject({
		weight: "advice",
		file: "kits.csv",
		line: 2,
		received: "incomplete",
		message:
			"Kit A is not counted: 1 of 5 pieces missing. Find or order what is missing; it counts again after a round and the check after it.",
	});
	expect(out.problems.find((p) => p.code === "too-few-kits")?.received).toBe("kits in service: 2");
	expect(numberIn(rowsOf(out, "levers.csv")[0], "kits")).toBe(2);
	expect(out.made).toBe(true);
});

test("kits sent to an autoclave come back so many hours after their round began: a check before says nothing of them", () => {
	const stateAfter = (hours: number | string) =>
		registerOf(
			plan(
				unitWith(
					{ method: "autoclave", autoclave_turnaround_hours: hours },
					{
						"rounds-done.csv": `${ROUNDS}\n2027-02-27,10:00,11:30,A,no`,
						"checks.csv": `${HEADER}\n${pass("2027-02-27 16:00")}`,
					},
				),
			),
			"A",
			"state",
		);
	expect([1, 5, 24].map(stateAfter)).toEqual([["ready"], ["ready"], ["to_reprocess"]]);
	// Nobody knows when they come back.
	expect(stateAfter("a day")).toEqual(["to_reprocess"]);
});

// record.md, "State of a kit": too few pieces is incomplete; how many there should be must be known.
test.each<[string, string[], string]>([
	["all lines are read", ["bag set,bag,4", "bag set,mask,1"], "ready"],
	["one cannot be read", ["bag set,bag,5", "bag set,mask,one"], "to_reprocess"],
	["one is of nobody knows which kind", ["bag set,bag,5", ",mask,1"], "to_reprocess"],
	["one of another kind cannot be read", ["bag set,bag,5", "tube set,tube,one"], "ready"],
])("no check passes a kit that may lack a piece; of the lists of pieces %s", (_, lists, state) => {
	const files = {
		"kinds.csv": ["kind,piece,count", ...lists].join("\n"),
		"kits.csv": "kit,kind,status,ready_since,note\nA,bag set,in_service,,",
		"rounds-done.csv": `${ROUNDS}\n2027-02-27,10:00,11:30,A,no`,
		"checks.csv": `${HEADER}\n${pass("2027-02-27 12:00")}`,
	};
	expect(registerOf(plan(smallUnit(files)), "A", "state")).toEqual([state]);
});

// record.md, "State of a kit": by the latest of its events. A slip in the month of ready_since is
// none: it hid a use and a failed check of months.
test("a kit that is said to be ready since a day to come stands as the rest of its record says", () => {
	const stands = (...checks: string[]) => {
		const made = plan(
			smallUnit({
				"kits.csv": "kit,kind,status,ready_since,note\nA,bag set,in_service,2027-12-27,",
				"uses.csv": "at,kit,what,by,note\n2027-02-28 04:00,A,used,,",
				"checks.csv": [HEADER, ...checks].join("\n"),
			}),
		);
		return registerOf(made, "A", "state", "ready_until", "counts");
	};
	expect(stands()).toEqual(["to_reprocess", "", "yes"]);
	expect(stands(`2027-02-28 09:00,${FAILED}`)).toEqual(["in_repair", "", "no"]);
});

// architecture.md and record.md: what cannot be read gives no state; a kit that may have been used
// or have failed a test is not told ready, and its label not printed so.
describe("a line of the kit that cannot be read", () => {
	const stands = (uses: readonly string[], checks: readonly string[] = []) =>
		registerOf(withRecord({ uses, checks }), "A", "state", "use_next", "ready_since");
	const ready = ["ready", 1, "2027-02-27"];
	const notKnown = [undefined, undefined, "2027-02-27"];
	test.each<[string, Parameters<typeof stands>, unknown[]]>([
		["a use, what happened", [["2027-02-28 04:00,A,usd,,"]], notKnown],
		["a use, its day", [["2027-02-30 04:00,A,used,,"]], notKnown],
		["on the day since which it is ready", [["2027-02-27 04:00,A,usd,,"]], notKnown],
		["before the day since which it is ready", [["2027-02-26 04:00,A,usd,,"]], ready],
		["a use of another kit", [["2027-02-28 04:00,C,usd,,"]], ready],
		["a use of no kit", [["2027-02-28 04:00,,usd,,"]], ready],
		["a test of a check", [[], ["2027-02-28 09:00,A,5,yes,yes,nope,yes,yes,,"]], notKnown],
		["the day of a check", [[], ["2027-02-30 09:00,A,5,yes,yes,no,yes,yes,,"]], notKnown],
	])("%s", (_what, lines, expected) => {
		expect(stands(...lines)).toEqual(expected);
	});
});
