import { describe, expect, test } from "vitest";
import { registerAdvice } from "../../../../src/core/plan/births/registerAdvice.ts";
import { registerFigures } from "../../../../src/core/plan/births/registerFigures.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { addDays } from "../../../../src/core/values/date.ts";
import { recordsOf, repeated } from "../../forecast/register.ts";
import { codesOf, rowsOf } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

const start = "2027-03-01";
function adviceOn(records: string, settings: Record<string, string> = {}) {
	const read = readWorkbook(unitWith(settings, { "records.csv": records }));
	return registerAdvice(read, registerFigures(read, start), start);
}
/** Days up to the day before the plan. */
const lately = (...counts: (number | null)[]) => recordsOf(addDays(start, -counts.length), counts);
const usual = repeated([5, 4, 6, 3, 7, 5, 5], 12);

describe("what is said about a register", () => {
	test.each<[string, string, string[]]>([
		["nothing of an ordinary one", lately(...usual), []],
		["a register that ended two weeks ago", recordsOf("2026-11-23", usual), ["register-ended"]],
		["a day less", recordsOf("2026-11-24", usual), []],
		["nothing of an empty one", "date,births,kits_used", []],
		["too short", lately(4, 5, 6), ["short-register"]],
		["no births", lately(...repeated([0], 60)), ["short-register"]],
		["up to the eve of the plan", recordsOf("2026-12-07", usual), []],
		["days from the start on", recordsOf("2026-12-08", usual), ["record-after-start"]],
		["a gap of two weeks", lately(...usual, ...repeated([null], 14), ...usual), ["long-gap"]],
		["a gap of a day less", lately(...usual, ...repeated([null], 13), ...usual), []],
		[
			"two gaps",
			lately(4, ...repeated([null], 20), ...usual, ...repeated([null], 20), ...usual),
			["long-gap", "long-gap"],
		],
		["one huge day", lately(...usual, 60, ...usual), ["odd-day"]],
		["a busy day is not odd", lately(...usual, 15, ...usual), []],
		["births have doubled", lately(...usual, ...repeated([10], 28)), ["level-shift"]],
		["births have halved", lately(...usual, ...repeated([2, 3], 14)), ["level-shift"]],
		["births a little up", lately(...usual, ...repeated([6], 28)), []],
	])("%s", (_what, records, codes) => {
		const found = adviceOn(records);
		expect(found.map((p) => p.code)).toEqual(codes);
		for (const { weight, file, message } of found) {
			expect([weight, file]).toEqual(["advice", "records.csv"]);
			expect(message.length).toBeGreaterThan(20);
		}
	});

	test("more kits than births, with its line; as many are possible", () => {
		const records = `date,births,kits_used\n2027-02-01,3,3\n2027-02-02,3,4\n2027-02-03,,9`;
		expect(adviceOn(records).filter((p) => p.code === "more-kits-than-births")).toMatchObject([
			{ line: 3, column: "kits_used", received: "4" },
		]);
	});

	test("the odd day is named, and so is the day after a gap", () => {
		expect(adviceOn(lately(...usual, 60, 4))[0]?.message).toContain("60 births on 2027-02-27");
		expect(adviceOn(lately(...usual, ...repeated([null], 14), 4))[0]?.message).toContain(
			"14 days before 2027-02-28",
		);
	});

	test("a day is odd that would come once in a million, one birth less is not", () => {
		// Around 5 a day, Poisson with mean 7.5: 1.27 in a million days bring 24 or more, 0.37 bring 25.
		expect(adviceOn(lately(...usual, 24, ...usual))).toEqual([]);
		expect(adviceOn(lately(...usual, 25, ...usual))).toMatchObject([
			{ code: "odd-day", received: "25", column: "births" },
		]);
	});

	test("the direction of a change of level", () => {
		const words = (counts: number[]) => adviceOn(lately(...usual, ...counts))[0]?.message;
		expect(adviceOn(lately(...usual, ...repeated([10], 28)))).toMatchObject([{ column: "births" }]);
		expect(words(repeated([10], 28))).toContain("risen from 5.0 to 10.0");
		expect(words(repeated([2], 28))).toContain("fallen from 5.0 to 2.0");
	});

	test("too short without births a day: what is lacking is advice, for the register is not wrong", () => {
		const found = adviceOn(lately(4, 5, 6), { births_per_day: "" });
		expect(found.map(({ weight, file, code }) => [weight, file, code])).toEqual([
			["advice", "records.csv", "short-register"],
		]);
	});

	test("without a wish for a forecast its absence is not remarked on", () => {
		expect(adviceOn(lately(4, 5, 6), { births_from_register: "no" })).toEqual([]);
	});
});

test("of births that nobody gives, and a register too short to tell, only the births are lacking", () => {
	const settings = { births_per_day: "", births_from_register: "yes" };
	const made = plan(unitWith(settings, { "records.csv": lately(4, 5) }));
	const [day] = rowsOf(made, "day-plan.csv");
	expect(codesOf(day?.births_expected)).toEqual(["not-given"]);
});
