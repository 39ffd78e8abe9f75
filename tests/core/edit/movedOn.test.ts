import { expect, test } from "vitest";
import { type MovedOn, movedOn } from "../../../src/core/edit/movedOn.ts";
import type { Workbook } from "../../../src/core/workbook.ts";
import { smallUnit, unitWith } from "../smallUnit.ts";

function moved(workbook: Workbook): MovedOn {
	const outcome = movedOn(workbook, []);
	if (!outcome.ok) throw new Error(outcome.problems[0]?.message);
	return outcome.value;
}

const births = `date,births,note
	2027-02-27,5,
	2027-03-01,,
	2027-03-03,8,referrals
	2027-03-07,,market day
	2027-03-08,4,holiday
	early March,7,no date`;

test("the first day moves on by the days of the plan, over the end of a month too", () => {
	const week = moved(unitWith({ plan_start: "2027-03-29", plan_days: 7 }));
	expect([week.first, week.last]).toEqual(["2027-04-05", "2027-04-11"]);
	expect(week.workbook.tables["unit.csv"]?.rows).toContainEqual(["plan_start", "2027-04-05"]);
	const day = moved(unitWith({ plan_start: "2028-02-29", plan_days: 1 }));
	expect([day.first, day.last]).toEqual(["2028-03-01", "2028-03-01"]);
});

test("births expected on days past go and are named; days to come and odd dates stay", () => {
	const { workbook, past } = moved(smallUnit({ "births.csv": births }));
	expect(past).toEqual([
		{ date: "2027-02-27", births: "5", note: "" },
		{ date: "2027-03-03", births: "8", note: "referrals" },
		{ date: "2027-03-07", births: "", note: "market day" },
	]);
	expect(workbook.tables["births.csv"]?.rows).toEqual([
		["2027-03-08", "4", "holiday"],
		["early March", "7", "no date"],
	]);
});

test("every other sheet is the same as before", () => {
	const before = smallUnit({ "births.csv": births });
	const { workbook } = moved(before);
	for (const [file, table] of Object.entries(before.tables))
		if (file !== "unit.csv" && file !== "births.csv") expect(workbook.tables[file]).toBe(table);
	const settings = (book: Workbook) =>
		book.tables["unit.csv"]?.rows.filter(([key]) => key !== "plan_start");
	expect(settings(workbook)).toEqual(settings(before));
});

test.each([{ plan_start: "Monday" }, { plan_days: "a week" }])(
	"with %o nothing is moved, and the reason is given",
	(settings) => {
		const outcome = movedOn(unitWith(settings), []);
		expect(outcome.ok ? [] : outcome.problems.map(({ code }) => code)).toEqual(["bad-cell"]);
	},
);

test("what was planned is kept of the days that are past, and of no other", () => {
	const planned = ["2027-03-07", "2027-03-08", "2027-03-09"].map((date) => ({
		date,
		measure: "births" as const,
		expected: 6,
		setAside: 10,
	}));
	const outcome = movedOn(smallUnit(), planned);
	expect(outcome.ok && outcome.value.workbook.tables["past-plans.csv"]?.rows).toEqual([
		["2027-03-07", "births", "6", "10"],
	]);
});
