import { describe, expect, test } from "vitest";
import { unitMonths } from "../../../../src/core/plan/district/unitMonths.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { MonthSums, type TrendRow } from "../../../../src/core/units/monthSums.ts";
import { valueIn } from "../../planCells.ts";
import { smallUnit } from "../../smallUnit.ts";

const WHOSE = { unit: "Hill", path: "units/hill" };
/** Births of one day in each of some months. */
const register = (...lines: readonly string[]) =>
	readWorkbook(
		smallUnit({
			"records.csv": ["date,births,kits_used", ...lines].join("\n"),
			"past-plans.csv": `date,measure_of,expected,set_aside
				2026-12-05,births,6,9`,
		}),
	);
const births = (...lines: readonly string[]) =>
	unitMonths(WHOSE, register(...lines))
		.filter(({ measure }) => valueIn(measure) === "births")
		.map(({ month, planned_expected, done, change }) =>
			[month, planned_expected, done, change].map(valueIn),
		);

describe("a unit's months", () => {
	test("what was done, and the difference to the month before where that is recorded too", () => {
		expect(births("2026-10-03,5,", "2027-01-04,9,", "2027-02-04,7,")).toEqual([
			["2026-10", null, 5, null],
			["2026-12", 6, null, null],
			["2027-01", null, 9, null],
			["2027-02", null, 7, -2],
		]);
	});

	test("the last twelve months of which something is written down", () => {
		const lines = Array.from({ length: 14 }, (_, i) => {
			const month = String((i % 12) + 1).padStart(2, "0");
			return `${2024 + Math.floor(i / 12)}-${month}-15,${i + 1},`;
		});
		const months = births(...lines).map(([month]) => month);
		expect(months).toHaveLength(12);
		expect([months[0], months.at(-1)]).toEqual(["2024-04", "2026-12"]);
	});

	test("whose they are stands in each row, and an item has the district's name", () => {
		const read = readWorkbook(
			smallUnit({
				"records.csv": "date,births,kits_used\n2027-02-21,5,",
				"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
					gauze squares,G1,90,,2027-01-05,,
					liquid,L1,10,2027-01-10,2027-01-20,,2027-07-10`,
				"journal.csv": `day,item,lot,entry,quantity,note
					2027-02-20,gauze squares,G1,issue,9,
					2027-02-20,liquid,L1,issue,2,`,
			}),
		);
		const rows = unitMonths(WHOSE, read, (item) => `${item} of all`);
		expect(new Set(rows.map(({ unit, path }) => `${valueIn(unit)} ${valueIn(path)}`))).toEqual(
			new Set(["Hill units/hill"]),
		);
		const measures = rows.map(({ measure }) => valueIn(measure));
		expect(measures).toContain("gauze squares of all");
		expect(measures).toContain("liquid of all");
		expect(measures).toContain("births");
		expect(measures).not.toContain("births of all");
		expect(unitMonths(WHOSE, read).map(({ measure }) => valueIn(measure))).toContain("liquid");
	});

	test("a measure of which nothing is known has no row", () => {
		for (const { planned_expected, planned_set_aside, done } of unitMonths(
			WHOSE,
			register("2027-01-04,9,"),
		))
			expect(
				[planned_expected, planned_set_aside, done].map(valueIn).some((value) => value !== null),
			).toBe(true);
	});
});

describe("the months of all units", () => {
	const row = (of: Partial<TrendRow>): TrendRow => ({
		month: "2027-02",
		measure: "births",
		measure_unit: "births",
		planned_expected: null,
		planned_set_aside: null,
		done: null,
		change: null,
		...of,
	});
	const sums = new MonthSums();
	sums.add([row({ planned_expected: 5, planned_set_aside: 8, done: 6, change: 2 })]);
	sums.add([
		row({ planned_expected: 7, planned_set_aside: 9, done: 3 }),
		row({ month: "2027-01", done: 4 }),
	]);
	sums.add([row({ measure: "rounds", measure_unit: "rounds", planned_set_aside: 2 })]);
	const rows = sums.table().rows.map((each) => Object.values(each).map((cell) => valueIn(cell)));

	test("added up by month and measure, with how many units each sum is of", () => {
		expect(rows).toEqual([
			["2027-01", "births", "births", 0, null, null, 1, 4, 0, null],
			["2027-02", "births", "births", 2, 12, 17, 2, 9, 1, 2],
			["2027-02", "rounds", "rounds", 0, null, 2, 0, null, 0, null],
		]);
	});

	test("a unit that has two names for an item is one unit, and all of it is in the sum", () => {
		const twice = new MonthSums();
		const of = { measure: "bleach", measure_unit: "mL" };
		twice.add([row({ ...of, done: 100, change: 10 }), row({ ...of, done: 50, change: 20 })]);
		twice.add([row({ ...of, done: 10, planned_expected: 1 })]);
		const rows = twice.table().rows.map((each) => Object.values(each).map((cell) => valueIn(cell)));
		expect(rows).toEqual([["2027-02", "bleach", "mL", 1, 1, null, 2, 160, 1, 30]]);
	});
});
