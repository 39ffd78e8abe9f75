import { describe, expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { DESCALE_STEP, RINSE_STEP } from "../../../src/core/rounds/timedSteps.ts";
import { columnOf, contentOf } from "../contentOf.ts";
import { codesOf, numberIn, problemCodes, rowsOf, totalOf } from "../planCells.ts";
import { smallUnit, unitWith } from "../smallUnit.ts";

const FILE = "run-sheet.csv";
const rounds = (...starts: string[]) => ["start,label", ...starts].join("\n");

test("every round of every day, step by step, with who is needed", () => {
	const made = plan(unitWith({ plan_days: 2, workers_per_round: 2 }));
	const rows = contentOf(
		made,
		FILE,
		"date",
		"round",
		"step",
		"starts",
		"ends",
		"hands_on",
		"people",
	);
	expect(rows).toHaveLength(2 * 3 * 4);
	expect(rows.slice(0, 5)).toEqual([
		["2027-03-01", "morning", "prepare", "07:00", "07:20", "yes", 2],
		["2027-03-01", "morning", "wash and dry", "07:20", "08:10", "yes", 2],
		["2027-03-01", "morning", "soak", "08:10", "08:30", "no", 0],
		["2027-03-01", "morning", "rinse and store", "08:30", "08:50", "yes", 2],
		["2027-03-01", "afternoon", "prepare", "14:00", "14:20", "yes", 2],
	]);
	expect(rows.at(-1)?.slice(0, 2)).toEqual(["2027-03-02", "night"]);
});

test("a round without a name goes by its time", () => {
	expect(
		new Set(columnOf(plan(smallUnit({ "rounds.csv": rounds("07:00,") })), FILE, "round")),
	).toEqual(new Set(["07:00"]));
});

describe("a round past midnight", () => {
	test.each([
		["2027-02-28", "2027-03-01"],
		["2028-02-28", "2028-02-29"],
		["2028-02-29", "2028-03-01"],
		["2027-12-31", "2028-01-01"],
		["2027-03-27", "2027-03-28"],
	])("of %s ends on %s and belongs to the day it starts on", (date, next) => {
		const made = plan(
			unitWith({ plan_start: date, plan_days: 1 }, { "rounds.csv": rounds("23:00,late") }),
		);
		expect(contentOf(made, FILE, "date", "starts", "ends", "ends_on")).toEqual([
			[date, "23:00", "23:20", ""],
			[date, "23:20", "01:50", next],
			[date, "01:50", "02:10", next],
			[date, "02:10", "02:30", next],
		]);
	});
});

describe("kits of a round", () => {
	const kitsOf = (settings: Record<string, string | number>, kits?: string) =>
		new Set(
			columnOf(plan(unitWith(settings, kits ? { "kits.csv": kits } : {})), FILE, "kits").map(
				Number,
			),
		);
	const header = "kit,kind,status,ready_since,note";

	test.each([
		["those that are enough when it runs", {}, undefined, [2]],
		["more where more are used", { births_per_day: 30 }, undefined, [3]],
		["never more than are in service", { births_per_day: 200 }, undefined, [3]],
		["one where there are none", { births_per_day: 200 }, header, [1]],
		["one where all are out of service", {}, `${header}\nA,bag set,out_of_service,,`, [1]],
		["one where nothing is used", { births_per_day: 0 }, header, [1]],
	])("%s", (_what, settings, kits, expected) => {
		expect([...kitsOf(settings, kits)]).toEqual(expected);
	});
});

describe("descaling", () => {
	test.each([
		[0, 0, 0],
		// Whichever of the 21 rounds run, each descales.
		[1, 4, 21],
		[2, 2, 2],
		[4, 1, 1],
		[5, 0, 0],
	])("every %d rounds that run: %d in a week of 4.3, on %d sheets", (every, times, sheets) => {
		const made = plan(unitWith({ descale_every_rounds: every }));
		const steps = columnOf(made, FILE, "step");
		const ran = numberIn(totalOf(made, "rounds"), "expected") as number;
		expect(every === 0 ? 0 : Math.floor(ran / every)).toBe(times);
		expect(steps.filter((step) => step === DESCALE_STEP)).toHaveLength(sheets);
		steps.forEach((step, i) => {
			if (step === DESCALE_STEP) expect(steps.slice(i + 1, i + 3)).toEqual([RINSE_STEP, "prepare"]);
		});
	});

	test("takes the times of the settings", () => {
		const made = plan(
			unitWith({ descale_every_rounds: 1, descale_minutes: 30, descale_rinse_minutes: 7 }),
		);
		const minutes = (text: unknown) =>
			Number(String(text).slice(0, 2)) * 60 + Number(String(text).slice(3));
		const own = contentOf(made, FILE, "step", "starts", "ends").filter(([step]) =>
			[DESCALE_STEP, RINSE_STEP].includes(String(step)),
		);
		expect(own.map(([, from, to]) => minutes(to) - minutes(from)).slice(0, 2)).toEqual([30, 7]);
	});
});

describe("without a run sheet", () => {
	test("after each use there are no rounds by the clock, and a plan all the same", () => {
		const made = plan(unitWith({ reprocessing: "after_each_use", heat_kw: 3 }));
		expect([FILE, "boiling.csv", "tonight.csv"].flatMap((file) => rowsOf(made, file))).toEqual([]);
		expect(made.made).toBe(true);
	});

	test.each([
		["no rounds", rounds(), "no-rounds"],
		["two rounds at the same minute", rounds("07:00,one", "07:00,other"), "doubled-row"],
		["a time that is none", rounds("25:00,one"), "bad-cell"],
	])("%s: a problem in words, no plan and no rows", (_what, table, code) => {
		const made = plan(smallUnit({ "rounds.csv": table }));
		expect(made.made).toBe(false);
		expect(problemCodes(made, "error")).toContain(code);
		expect(made.problems.find((p) => p.code === code)?.file).toBe("rounds.csv");
		expect(rowsOf(made, FILE)).toEqual([]);
	});

	test.each([
		["a soak container too small", { soak_container_litres: 6 }, {}, "soak-too-small"],
		["no steps", {}, { "steps.csv": "step,basis,minutes,hands_on" }, "no-steps"],
	])("%s leaves the plan unmade and says so", (_what, settings, changes, code) => {
		const made = plan(unitWith(settings as Record<string, number>, changes));
		expect(made.made).toBe(false);
		expect(problemCodes(made, "error")).toContain(code);
	});

	test("a soak container too small leaves one row a round, without times", () => {
		const made = plan(unitWith({ soak_container_litres: 6 }));
		const rows = rowsOf(made, FILE);
		expect(rows).toHaveLength(21);
		expect(codesOf(rows[0]?.starts)).toEqual(["soak-too-small"]);
		expect(made.problems.find((p) => p.code === "soak-too-small")).toMatchObject({
			file: "unit.csv",
			column: "soak_container_litres",
			received: "6.8 L",
			allowed: "at most 6 L",
		});
	});
});
