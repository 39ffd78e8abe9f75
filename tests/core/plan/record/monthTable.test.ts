import { describe, expect, test } from "vitest";
import type { Figure } from "../../../../src/core/calculation.ts";
import { measuresDone } from "../../../../src/core/plan/record/measuresDone.ts";
import { monthTable } from "../../../../src/core/plan/record/monthTable.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { daysOfMonth } from "../../../../src/core/values/isoMonth.ts";
import { valueIn } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

/** Rows of a report as [measure, expected, set aside, done, note]; undefined where a figure has no value. */
function report(
	changes: Record<string, string>,
	month = "2027-03",
	settings: Record<string, string | number> = {},
) {
	return monthTable(unitWith(settings, changes), month).rows.map((row) =>
		(["measure", "planned_expected", "planned_set_aside", "done", "note"] as const).map((key) => {
			const { outcome } = row[key];
			return outcome.ok ? outcome.value : undefined;
		}),
	);
}

const inputsOf = (figure: Figure<unknown> | undefined) =>
	figure?.origin.kind === "computed" ? figure.origin.inputs : {};

const rowOf = (rows: ReturnType<typeof report>, measure: string) =>
	rows.find(([name]) => name === measure)?.slice(1);

/** A month worked out by hand: three days of births, five uses on two days, three rounds, one descaling. */
const march = {
	"records.csv": `date,births,kits_used
		2027-02-28,9,9
		2027-03-01,4,2
		2027-03-02,6,
		2027-03-31,5,
		2027-04-01,7,7`,
	"uses.csv": `at,kit,what,by,note
		2027-03-01 10:00,A,used,,
		2027-03-02 03:10,A,used,,
		2027-03-02 14:00,B,used,,
		2027-03-02 15:00,C,opened,,
		2027-03-30 23:50,,none_ready,,`,
	"rounds-done.csv": `date,start,ended,kits,litres,descaled
		2027-03-01,14:00,16:00,A,5.5,no
		2027-03-02,21:00,23:10,A B C,6,yes
		2027-03-02,23:30,,A,,no
		2027-04-01,07:00,08:00,A,9,yes`,
	"checks.csv": `checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,relief_opens,suction_holds,note
		2027-03-01 16:10,A,5,yes,yes,yes,yes,yes,,
		2027-03-02 23:20,A,4,yes,yes,yes,yes,yes,,
		2027-03-02 23:30,B,5,yes,no,yes,yes,yes,,
		2027-03-03 23:30,B,,,,,,,,not looked at`,
	"past-plans.csv": `date,measure_of,expected,set_aside
		2027-03-01,births,6,10
		2027-03-02,births,6.5,11
		2027-03-01,kits_used,0.6,
		2027-03-02,kits_used,0.65,
		2027-03-01,rounds,0.5,1
		2027-03-02,rounds,0.55,1
		2027-04-01,births,6,10`,
	"journal.csv": `day,item,lot,entry,quantity,note
		2027-03-01,liquid,L1,issue,0.8,
		2027-03-02,liquid,L1,issue,0.9,
		2027-03-03,liquid,L1,count,8,
		2027-03-03,liquid,L1,loss,0.2,leaked
		2027-03-03,liquid,L1,receipt,5,
		2027-03-04,powder,P1,receipt,0.1,
		2027-03-04,powder,P1,receipt,0.2,
		2027-03-05,tablets,T1,loss,3,wet
		2027-04-01,liquid,L1,issue,5,`,
};

describe("the report of a month", () => {
	const rows = report(march);

	test.each([
		// 4 + 6 + 5 births; planned 6 + 6.5, set aside 10 + 11.
		["births", [12.5, 21, 15, "3 of 31 days recorded"]],
		// The register's 2 on the 1st, where the use written down does not count again; 2 uses on the 2nd and one kit opened; none on the 30th, when a need was written down.
		["kits_used", [1.25, null, 5, "3 of 31 days recorded"]],
		// One in 1,000 of 1.25 uses is accepted.
		["needs_none_ready", [0.00125, null, 1, "3 of 31 days recorded"]],
		["rounds", [1.05, 2, 3, "2 of 31 days recorded"]],
		["kits_failed", [null, null, 2, "2 of 31 days recorded"]],
		// One in 7 rounds: 1.05 ÷ 7.
		["descalings", [0.15, null, 1, "2 of 31 days recorded"]],
		["solution_litres", [null, null, 11.5, "2 of 31 days recorded"]],
		["boiled_litres", [null, null, null, "not recorded"]],
		// 0.8 + 0.9 issued; what leaked is no use of it.
		["liquid", [null, null, 1.7, "3 of 31 days recorded; received 5, lost 0.2"]],
		["powder", [null, null, 0, "1 of 31 days recorded; received 0.3"]],
		["tablets", [null, null, 0, "1 of 31 days recorded; lost 3"]],
		["vinegar", [null, null, null, "not recorded"]],
	] as const)("%s", (measure, expected) => {
		const found = rowOf(rows, measure)?.map((value) =>
			typeof value === "number" ? Number(value.toPrecision(12)) : value,
		);
		expect(found).toEqual(expected);
	});

	test("what nobody wrote down is not recorded, and never 0", () => {
		for (const row of report(march, "2027-05")) {
			expect(row[3]).toBeNull();
			expect(row[4]).toBe("not recorded");
		}
	});

	test("one line of the record is one of what it says, and leads there", () => {
		const placesOf = (measure: string) => {
			const row = monthTable(unitWith({}, march), "2027-03").rows.find(
				(each) => valueIn(each.measure) === measure,
			);
			return Object.values(inputsOf(inputsOf(row?.done).parts)).map((part) => [
				valueIn(part),
				part.unit,
				part.origin.kind === "typed" && part.origin.place,
			]);
		};
		const at = (file: string, line: number) => [1, "", { file, line, column: "" }];
		expect(placesOf("rounds")).toEqual([2, 3, 4].map((line) => at("rounds-done.csv", line)));
		expect(placesOf("kits_used").slice(1)).toEqual([3, 4, 5].map((line) => at("uses.csv", line)));
	});

	test("the same units are shown of what was planned or done and what was not", () => {
		const unitsIn = (month: string) =>
			monthTable(unitWith({}, march), month).rows.map(({ unit }) => valueIn(unit));
		expect(unitsIn("2027-05")).toEqual(unitsIn("2027-03"));
		expect(unitsIn("2027-03")).not.toContain(undefined);
	});

	test("day by day, with the days on which it was written down that there was none", () => {
		const { kits_used, solution_litres } = measuresDone(
			readWorkbook(unitWith({}, march)),
			daysOfMonth("2027-03"),
		);
		expect([...kits_used.byDay]).toEqual([
			["2027-03-01", 2],
			["2027-03-02", 3],
			["2027-03-30", 0],
		]);
		expect(solution_litres.done?.unit).toBe("L");
	});

	test("what came as a lot of its own was received, as the page's table of the store says", () => {
		const lots = `item,lot,quantity,made_on,received_on,arrives_on,expires_on
			liquid,L1,10,2027-01-10,2027-01-20,,2027-07-10
			liquid,L2,10,2027-02-10,2027-03-20,2027-03-20,2027-08-10
			liquid,L3,4,2027-02-10,,2027-03-25,2027-08-10
			vinegar,V1,3,,2027-03-02,,
			powder,P1,500,,2027-04-01,,2028-12-01`;
		const rows = report({ ...march, "lots.csv": lots });
		expect(rowOf(rows, "liquid")?.[3]).toBe("3 of 31 days recorded; received 15, lost 0.2");
		// Of an item without a line nobody says that what came is all that happened.
		expect(rowOf(rows, "vinegar")?.[3]).toBe("not recorded");
	});

	test("where nothing is descaled, no descaling is planned", () => {
		const without = report(march, "2027-03", { descale_every_rounds: 0 });
		expect(rowOf(without, "descalings")?.slice(0, 2)).toEqual([null, null]);
	});

	test.each([
		["2027-02", 28],
		["2028-02", 29],
		["2027-04", 30],
		["2027-12", 31],
	])("%s has %d days", (month, count) => {
		const uses = { "uses.csv": `at,kit,what,by,note\n${month}-03 10:00,A,used,,` };
		expect(rowOf(report(uses, month), "kits_used")?.[3]).toBe(`1 of ${count} days recorded`);
	});

	test("every day of a month over a year's end is its own", () => {
		const uses = {
			"uses.csv": `at,kit,what,by,note\n2026-12-31 23:59,A,used,,\n2027-01-01 00:01,A,used,,`,
		};
		expect(rowOf(report(uses, "2026-12"), "kits_used")?.[2]).toBe(1);
		expect(rowOf(report(uses, "2027-01"), "kits_used")?.[2]).toBe(1);
	});
});
