import { describe, expect, test } from "vitest";
import { type KitEvent, kitState } from "../../../src/core/record/kitState.ts";
import { at, check, listed, round, used } from "./kitEvents.ts";

const LIFE_DAYS = 7;

describe("a kit by its record", () => {
	test.each<[string, KitEvent[], string, string, string | undefined]>([
		["of which nothing is known", [], "2027-03-01", "to_reprocess", undefined],
		["listed as ready", [listed("2027-03-01")], "2027-03-08", "ready", "2027-03-08"],
		["whose life is over", [listed("2027-03-01")], "2027-03-09", "to_reprocess", "2027-03-08"],
		[
			"after a round, not tested yet",
			[round("2027-03-01")],
			"2027-03-01",
			"to_reprocess",
			undefined,
		],
		[
			"after a round and its check",
			[round("2027-03-01"), check("2027-03-01")],
			"2027-03-02",
			"ready",
			"2027-03-08",
		],
		[
			"a check before use does not prolong its life",
			[round("2027-03-01"), check("2027-03-01"), check("2027-03-06", "passed", "before_use")],
			"2027-03-09",
			"to_reprocess",
			"2027-03-08",
		],
		[
			"nor does a second check after the round",
			[round("2027-03-01"), check("2027-03-01"), check("2027-03-06")],
			"2027-03-09",
			"to_reprocess",
			"2027-03-08",
		],
		[
			"a check before use is not the check of its round",
			[round("2027-03-01"), check("2027-03-01", "passed", "before_use")],
			"2027-03-01",
			"to_reprocess",
			undefined,
		],
		[
			"used after its check",
			[round("2027-03-01"), check("2027-03-01"), used("2027-03-02")],
			"2027-03-02",
			"to_reprocess",
			undefined,
		],
		[
			"checked after its use",
			[round("2027-03-01"), check("2027-03-01"), used("2027-03-02"), check("2027-03-03")],
			"2027-03-03",
			"to_reprocess",
			undefined,
		],
		[
			"short of a piece, found again",
			[
				round("2027-03-01"),
				check("2027-03-01", "incomplete"),
				check("2027-03-01", "passed", "after_round", 620),
			],
			"2027-03-01",
			"incomplete",
			undefined,
		],
		[
			"used and found short at one minute: what is worse is written last",
			[check("2027-03-01", "incomplete", "after_round", 480), used("2027-03-01", 480)],
			"2027-03-01",
			"incomplete",
			undefined,
		],
		[
			"passed and used at one minute",
			[
				round("2027-03-01", 470),
				used("2027-03-01", 480),
				check("2027-03-01", "passed", "after_round", 480),
			],
			"2027-03-01",
			"to_reprocess",
			undefined,
		],
		[
			"failed in two ways at one minute: repair takes longest",
			[
				check("2027-03-01", "in_repair"),
				check("2027-03-01", "incomplete"),
				check("2027-03-01", "not_clean"),
			],
			"2027-03-01",
			"in_repair",
			undefined,
		],
		[
			"a round that ended at the minute of its check",
			[check("2027-03-01", "passed", "after_round", 480), round("2027-03-01", 480)],
			"2027-03-01",
			"ready",
			"2027-03-08",
		],
		[
			"used at noon and found short the evening before",
			[used("2027-03-02", 720), check("2027-03-01", "incomplete", "after_round", 1200)],
			"2027-03-02",
			"incomplete",
			undefined,
		],
		[
			"in repair, and found not clean",
			[check("2027-03-01", "in_repair"), check("2027-03-02", "not_clean")],
			"2027-03-02",
			"in_repair",
			undefined,
		],
		[
			"in repair, through a round and used before its check",
			[check("2027-03-01", "in_repair"), round("2027-03-02"), used("2027-03-02", 700)],
			"2027-03-02",
			"to_reprocess",
			undefined,
		],
		[
			"not clean",
			[round("2027-03-01"), check("2027-03-01", "not_clean")],
			"2027-03-01",
			"to_reprocess",
			undefined,
		],
		[
			"mended, through a round and tested",
			[check("2027-03-01", "in_repair"), round("2027-03-02"), check("2027-03-02")],
			"2027-03-02",
			"ready",
			"2027-03-09",
		],
		[
			"mended and through a round",
			[check("2027-03-01", "in_repair"), round("2027-03-02")],
			"2027-03-02",
			"to_reprocess",
			undefined,
		],
		[
			"a check of the time before, standing for its round",
			[check("2027-03-01", "passed", "stands_for_round")],
			"2027-03-08",
			"ready",
			"2027-03-08",
		],
		[
			"used and disinfected in one minute: the unsafe one wins",
			[round("2027-03-01"), used("2027-03-01")],
			"2027-03-01",
			"to_reprocess",
			undefined,
		],
		[
			"listed as ready, and used that day",
			[listed("2027-03-01"), used("2027-03-01", 900)],
			"2027-03-02",
			"ready",
			"2027-03-08",
		],
	])("%s", (_, events, day, name, until) => {
		const state = kitState(events, day, LIFE_DAYS);
		expect([state.name, state.readyUntil]).toEqual([name, until]);
	});

	test.each([
		["nothing_known", []],
		["used", [round("2027-03-01"), used("2027-03-01")]],
		["not_tested", [round("2027-03-01")]],
		["not_clean", [round("2027-03-01"), check("2027-03-01", "not_clean")]],
		["found_incomplete", [round("2027-03-01"), check("2027-03-01", "incomplete")]],
		["test_failed", [round("2027-03-01"), check("2027-03-01", "in_repair")]],
		["life_over", [listed("2027-02-20")]],
		[undefined, [listed("2027-03-01")]],
	])("says why it is not ready: %s", (reason, events) => {
		expect(kitState(events, "2027-03-02", LIFE_DAYS).reason).toBe(reason);
	});

	// record.md, "State of a kit": a failed check takes it out until a round done after it and
	// that round's passed after-round check.
	const FAILED = check("2027-03-01", "in_repair");
	test.each<[string, KitEvent[], boolean]>([
		["failed", [FAILED], true],
		["used", [FAILED, used("2027-03-02")], true],
		["opened", [FAILED, { what: "opened", at: at("2027-03-02") }], true],
		["found not clean", [FAILED, check("2027-03-02", "not_clean")], true],
		["passed without a round", [FAILED, check("2027-03-02")], true],
		["through a round", [FAILED, round("2027-03-02")], true],
		[
			"checked before use only",
			[FAILED, round("2027-03-02"), check("2027-03-02", "passed", "before_use")],
			true,
		],
		[
			"used before the check",
			[FAILED, round("2027-03-02", 400), used("2027-03-02"), check("2027-03-02")],
			true,
		],
		[
			"not clean after its round",
			[FAILED, round("2027-03-02"), check("2027-03-02", "not_clean")],
			true,
		],
		["through a round and tested", [FAILED, round("2027-03-02"), check("2027-03-02")], false],
		[
			"tested, and used again",
			[FAILED, round("2027-03-02"), check("2027-03-02"), used("2027-03-03")],
			false,
		],
		["not clean alone", [check("2027-03-01", "not_clean")], false],
		["listed as ready later", [FAILED, listed("2027-03-02")], false],
	])(
		"that failed is out of service until a later round's check has passed: %s",
		(_, events, isOut) => {
			const { outBy } = kitState(events, "2027-03-03", LIFE_DAYS);
			expect(outBy).toBe(isOut ? FAILED : undefined);
		},
	);
});
