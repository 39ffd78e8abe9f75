import { describe, expect, test } from "vitest";
import { movedOn } from "../../../src/core/edit/movedOn.ts";
import { withPlansKept } from "../../../src/core/edit/withPlansKept.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import { plannedDays } from "../../../src/core/plan/record/plannedDays.ts";
import type { Workbook } from "../../../src/core/workbook.ts";
import { numberIn, rowsOf } from "../planCells.ts";
import { smallUnit, unitWith } from "../smallUnit.ts";

function rolledOn(workbook: Workbook): Workbook {
	const outcome = movedOn(workbook, plannedDays(plan(workbook)));
	if (!outcome.ok) throw new Error(outcome.problems[0]?.message);
	return outcome.value.workbook;
}

const keptRows = ({ tables }: Workbook) => tables["past-plans.csv"]?.rows ?? [];

describe("what was planned for days past", () => {
	const before = smallUnit({ "births.csv": "date,births,note\n2027-03-03,8,referrals" });
	const after = rolledOn(before);

	test("is the day plan's own figures, one row a day and measure", () => {
		const rows = rowsOf(plan(before), "day-plan.csv");
		const of = (measure: string) => keptRows(after).filter((row) => row[1] === measure);
		expect(of("births").map(([date]) => date)).toEqual(
			[1, 2, 3, 4, 5, 6, 7].map((day) => `2027-03-0${day}`),
		);
		expect(of("births")[2]).toEqual([
			"2027-03-03",
			"births",
			"8",
			String(numberIn(rows[2], "births_set_aside")),
		]);
		// The day plan says no set-aside of kits used, and no expected product.
		expect(of("kits_used")[0]?.[3]).toBe("");
		expect(of("chlorine")[0]?.[2]).toBe("");
		expect(new Set(keptRows(after).map(([date, measure]) => `${date} ${measure}`)).size).toBe(
			keptRows(after).length,
		);
	});

	test("keeps its rows when an older day is left behind once more with another plan", () => {
		const back = unitWith(
			{ births_per_day: 20 },
			{
				"past-plans.csv": `date,measure_of,expected,set_aside,remark
					2027-03-02,births,6,10,kept by hand
					soon,births,1,2,`,
			},
		);
		const rows = keptRows(rolledOn(back));
		expect(rows.slice(0, 2)).toEqual([
			["2027-03-02", "births", "6", "10", "kept by hand"],
			["soon", "births", "1", "2", ""],
		]);
		expect(rows.filter(([date]) => date === "2027-03-02")).toHaveLength(1);
		expect(rows[2]?.slice(0, 3)).toEqual(["2027-03-01", "births", "20"]);
	});

	test("the lines of a file that was read are counted on", () => {
		const day = { date: "2027-03-01", expected: 6, setAside: undefined };
		const planned = [
			{ ...day, measure: "births" },
			{ ...day, measure: "kits_used" },
			{ ...day, date: "2027-02-01", measure: "births" },
		] as const;
		const read = (rows: string[][], lines: number[]) =>
			withPlansKept(
				{
					tables: { "past-plans.csv": { header: ["date", "measure_of", "expected"], rows, lines } },
				},
				planned,
			).tables["past-plans.csv"];
		expect(read([["1 Feb 2027"], ["2027-02-01", "births", "5"]], [2, 7])).toEqual({
			header: ["date", "measure_of", "expected", "set_aside"],
			rows: [
				["1 Feb 2027"],
				["2027-02-01", "births", "5"],
				["2027-03-01", "births", "6", ""],
				["2027-03-01", "kits_used", "6", ""],
			],
			lines: [2, 7, 8, 9],
		});
		expect(read([], [])?.lines).toEqual([2, 3, 4]);
		expect(read([["a"], ["b"], ["c"]], [2, 4, 9])?.lines?.slice(0, 4)).toEqual([2, 4, 9, 10]);
		const known = unitWith(
			{},
			{ "past-plans.csv": "date,measure_of\n2027-03-01,births\n2027-02-01," },
		);
		expect(withPlansKept(known, planned)).toBe(known);
	});

	test.each([1, 7, 28])("eight times %d days: every day once, old rows as they were", (days) => {
		let workbook = unitWith({ plan_days: days, births_per_day: 3 });
		let rows: (readonly string[])[] = [];
		for (let time = 1; time <= 8; time++) {
			workbook = rolledOn(workbook);
			const now = keptRows(workbook);
			expect(now.slice(0, rows.length)).toEqual(rows);
			expect(new Set(now.map(([date]) => date)).size).toBe(time * days);
			expect(new Set(now.map(([date, measure]) => `${date} ${measure}`)).size).toBe(now.length);
			rows = [...now];
		}
		expect(plan(workbook).problems.filter(({ file }) => file === "past-plans.csv")).toEqual([]);
	});

	test("a day whose plan has no answer is not written down as 0", () => {
		const workbook = unitWith({ births_per_day: "many" });
		expect(keptRows(rolledOn(workbook)).filter(([, measure]) => measure === "births")).toEqual([]);
	});
});
