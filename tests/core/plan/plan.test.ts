import { describe, expect, test } from "vitest";
import { noPlan, plan } from "../../../src/core/plan/plan.ts";
import { expectWithin } from "../../expectWithin.ts";
import { codesOf, numberIn, problemCodes, rowsOf, totalOf, valueIn } from "../planCells.ts";
import { smallUnit, unitWith } from "../smallUnit.ts";

describe("the plan of a small unit", () => {
	const made = plan(smallUnit());
	const [monday] = rowsOf(made, "day-plan.csv");

	test("is made, without errors", () => {
		expect(made.made).toBe(true);
		expect(problemCodes(made, "error")).toEqual([]);
	});

	test("has a row a day and then none", () => {
		expect(rowsOf(made, "day-plan.csv").map((row) => valueIn(row.date))).toEqual([
			"2027-03-01",
			"2027-03-02",
			"2027-03-03",
			"2027-03-04",
			"2027-03-05",
			"2027-03-06",
			"2027-03-07",
		]);
	});

	/** Three kits, 0.6 uses a day, renewed in time, gone through until nothing changes; tests/reference/coverSimulation.test.ts plays the rule. */
	const renewed = 0.0921316;
	const rounds =
		1 - Math.exp(-(0.25 + renewed * (10 / 24))) + 2 * (1 - Math.exp(-(0.175 + renewed * (7 / 24))));
	test.each([
		["births_expected", 6],
		["births_set_aside", 10],
		["kits_used_expected", 0.6],
		["kits_expired_expected", renewed],
		["kits_to_reprocess_expected", 0.6 + renewed],
		["kits_to_reprocess_set_aside", 2],
		["kits_needed", 4],
		["kits_in_service", 3],
		["rounds_expected", rounds],
		["rounds_set_aside", 2],
		["solution_litres_expected", 5.5 * rounds],
		["solution_litres_set_aside", 11],
		["chlorine_quantity_set_aside", 2 * 790],
		["boiled_litres_set_aside", 90],
		["boiled_buckets_set_aside", 9],
		["vinegar_litres_expected", rounds / 7],
		["vinegar_litres_set_aside", 1],
		["gauze_pieces_expected", 10 * (0.6 + renewed)],
		["gauze_pieces_set_aside", 20],
	])("%s of its first day is %d", (column, expected) => {
		expectWithin(numberIn(monday, column), expected, 2e-5, column);
	});

	test("names the product in use", () => {
		expect(valueIn(monday?.chlorine_product)).toBe("liquid");
	});

	test.each([
		["births", 42, 53],
		["kits_used", 4.2, 8],
		["kits_expired", 7 * renewed, 2],
		["kits_to_reprocess", 4.2 + 7 * renewed, 9],
		["rounds", 7 * rounds, 7],
		["solution_litres", 7 * 5.5 * rounds, 38.5],
		["chlorine", 7 * 790 * rounds, 7 * 790],
		["vinegar_litres", rounds, 1],
		["gauze_pieces", 10 * (4.2 + 7 * renewed), 90],
	] as const)("the week's %s: %d expected, %d set aside", (measure, expected, setAside) => {
		expectWithin(
			numberIn(totalOf(made, measure), "expected"),
			expected,
			2e-4 * Math.max(1, expected),
			measure,
		);
		expectWithin(numberIn(totalOf(made, measure), "set_aside"), setAside, 1e-9, measure);
	});

	/** A round of 110 minutes, whatever its kits. */
	const fixed = "step,basis,minutes,hands_on\nall of it,round,110,yes\nsoak,load,0,no";

	test("shows each number of kits, to three beyond those needed", () => {
		const rows = rowsOf(made, "kit-cover.csv");
		expect(rows.map((row) => valueIn(row.enough))).toEqual([
			"no",
			"no",
			"no",
			"yes",
			"yes",
			"yes",
			"yes",
		]);
		expect(rows.map((row) => valueIn(row.deciding))).toEqual([
			null,
			null,
			null,
			"risk",
			null,
			null,
			null,
		]);
	});

	test("where kits keep long enough, uses alone decide", () => {
		const rows = rowsOf(
			plan(unitWith({ ready_life_days: 90 }, { "steps.csv": fixed })),
			"kit-cover.csv",
		);
		[136.681, 11.5022, 0.734884, 0.038467, 0.00171635].forEach((unmet, i) => {
			expectWithin(numberIn(rows[i], "unmet_per_1000_uses"), unmet, 5e-6 * unmet, "per 1,000");
		});
	});

	test("mixes each product and each lot that can be used on the first day", () => {
		const rows = rowsOf(made, "mixing.csv");
		expect(rows.map((row) => [valueIn(row.product), valueIn(row.lot)])).toEqual([
			["liquid", "L1"],
			["powder", "P1"],
			["tablets", ""],
		]);
		expect(rows.map((row) => valueIn(row.product_measure))).toEqual(["mL", "g", "tablet"]);
		expect(valueIn(rows[1]?.strength_today_g_per_l)).toBe(null);
	});

	test("uses up each item of the store, the product in use by its solution", () => {
		const rows = rowsOf(made, "supply-use.csv");
		const liquid = rows.find((row) => valueIn(row.item) === "liquid");
		expectWithin(numberIn(liquid, "set_aside"), (7 * 790) / 1000, 1e-12, "L");
		expect(rows).toHaveLength(6);
		expect(numberIn(rows[4], "set_aside")).toBe(0);
	});
});

describe("other ways of working", () => {
	test("after each use, every kit is a round", () => {
		const [day] = rowsOf(
			plan(unitWith({ reprocessing: "after_each_use" }, { "rounds.csv": "start,label" })),
			"day-plan.csv",
		);
		expectWithin(numberIn(day, "rounds_expected"), 0.700482, 1e-6, "rounds");
		expect(numberIn(day, "kits_needed")).toBe(3);
	});

	test("once a day, solution goes by days with a round", () => {
		const [day] = rowsOf(plan(unitWith({ solution_made: "each_day" })), "day-plan.csv");
		expect(numberIn(day, "solution_litres_set_aside")).toBe(5.5);
	});

	test("no descaling, no vinegar", () => {
		const made = plan(unitWith({ descale_every_rounds: 0 }));
		expect(numberIn(totalOf(made, "vinegar_litres"), "set_aside")).toBe(0);
		const vinegar = rowsOf(made, "supply-use.csv").find((row) => valueIn(row.item) === "vinegar");
		expect(numberIn(vinegar, "set_aside")).toBe(0);
	});

	test("without kits in service there is a plan, and a word about it", () => {
		const made = plan(smallUnit({ "kits.csv": "kit,kind,status,ready_since,note" }));
		expect(made.made).toBe(true);
		expect(numberIn(rowsOf(made, "day-plan.csv")[0], "kits_in_service")).toBe(0);
		expect(made.problems.find((p) => p.code === "too-few-kits")?.message).toMatch(
			/^No kit is in service; 4 are needed/,
		);
	});

	test("with one kit in service its word is of one", () => {
		const made = plan(
			smallUnit({ "kits.csv": "kit,kind,status,ready_since,note\nA,bag set,in_service,," }),
		);
		expect(made.problems.find((p) => p.code === "too-few-kits")?.message).toMatch(
			/^One kit is in service and \d are needed\.$/,
		);
	});

	test("without births nothing is used, and kits go out of date", () => {
		const made = plan(unitWith({ births_per_day: 0 }));
		const [day] = rowsOf(made, "day-plan.csv");
		expect(numberIn(day, "kits_used_expected")).toBe(0);
		expectWithin(numberIn(day, "kits_expired_expected"), 3 / 7, 1e-3, "kits");
		expect(problemCodes(made)).toContain("mostly-expiries");
	});

	test("a year has a row for every day", () => {
		expect(rowsOf(plan(unitWith({ plan_days: 366 })), "day-plan.csv")).toHaveLength(366);
	});

	test("births of days of their own go into their days and the total", () => {
		const made = plan(
			smallUnit({ "births.csv": "date,births,note\n2027-03-02,20,\n2027-04-30,400," }),
		);
		expect(rowsOf(made, "day-plan.csv").map((row) => numberIn(row, "births_expected"))).toEqual([
			6, 20, 6, 6, 6, 6, 6,
		]);
		expectWithin(numberIn(totalOf(made, "births"), "expected"), 56, 1e-12, "births");
		expect(codesOf(rowsOf(made, "day-plan.csv")[0]?.births_expected)).toEqual([]);
	});

	test("with rounds that overlap it is not made, for nobody knows the kits it needs", () => {
		const made = plan(smallUnit({ "rounds.csv": "start,label\n07:00,a\n08:00,b" }));
		expect(made.made).toBe(false);
		expect(problemCodes(made, "error")).toEqual(["round-too-long", "too-few-hands"]);
	});
});

test("the plan of nothing, and of a unit without a first day, has no kinds of kit and nothing to say of them", () => {
	expect([noPlan.problems, noPlan.kinds, noPlan.found]).toEqual([[], [], []]);
	expect(plan(unitWith({ plan_start: "" })).kinds).toEqual([]);
});

test("a plan waits for what is used up too, where no day's figures hang on it", () => {
	const gloves = `item,basis,quantity,note
		gauze squares,piece,2,
		clean gloves,worker_round,many,`;
	const made = plan(smallUnit({ "usage.csv": gloves }));
	for (const day of rowsOf(made, "day-plan.csv"))
		expect(Object.values(day).flatMap(codesOf)).toEqual([]);
	expect(made.made).toBe(false);
});
