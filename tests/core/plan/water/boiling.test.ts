import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { columnOf, contentOf } from "../../contentOf.ts";
import { codesOf, numberIn, problemCodes, rowsOf, valueIn } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

const FILE = "boiling.csv";
const boiling = (settings: Record<string, string | number>, changes: Record<string, string> = {}) =>
	plan(unitWith({ heat_kw: 3, altitude_m: 0, plan_days: 2, ...settings }, changes));

describe("one load of the morning round, 3 kW of charcoal", () => {
	const made = boiling({});
	const [morning] = rowsOf(made, FILE);
	const boilingC = 99.9968;
	const start = 30 + (2 * 0.6 * 60) / 2257;
	const heat = (start * 4.186 * (boilingC - 22)) / 0.6 / 60;
	const cool = 240 * Math.log((boilingC - 25) / 12);
	test.each([
		["litres", 30, 0],
		["batches", 2, 0],
		["start_litres", start, 1e-9],
		["hold_minutes", 1, 0],
		["heat_minutes", heat, 1e-3],
		["cool_minutes", cool, 1e-2],
		["boiling_point_c", boilingC, 1e-4],
		["fuel_quantity", (0.6 * (heat + 2) * 60) / 0.2 / 30_000, 1e-5],
	])("%s: %d", (column, expected, tolerance) => {
		expectWithin(numberIn(morning, column), expected, tolerance, column);
	});

	test("the stove is lit the evening before: the soak ends at 8:30", () => {
		const minutes = Math.floor(8.5 * 60 - heat - 2 - cool);
		expect(minutes).toBe(-205);
		expect(valueIn(morning?.light_by)).toBe("2027-02-28 21:25");
	});

	test("every round of every day has its water", () => {
		expect(contentOf(made, FILE, "date", "round", "light_by", "fuel", "fuel_measure")).toEqual([
			["2027-03-01", "morning", "2027-02-28 21:25", "charcoal_traditional", "kg"],
			["2027-03-01", "afternoon", "2027-03-01 04:25", "charcoal_traditional", "kg"],
			["2027-03-01", "night", "2027-03-01 11:25", "charcoal_traditional", "kg"],
			["2027-03-02", "morning", "2027-03-01 21:25", "charcoal_traditional", "kg"],
			["2027-03-02", "afternoon", "2027-03-02 04:25", "charcoal_traditional", "kg"],
			["2027-03-02", "night", "2027-03-02 11:25", "charcoal_traditional", "kg"],
		]);
	});
});

describe("the day on which the stove is lit", () => {
	test.each([
		["2027-03-01", "2027-02-28"],
		["2028-03-01", "2028-02-29"],
		["2027-01-01", "2026-12-31"],
		["2027-03-28", "2027-03-27"],
	])("for the morning of %s is %s", (date, before) => {
		expect(columnOf(boiling({ plan_start: date }), FILE, "light_by")[0]).toBe(`${before} 21:25`);
	});
});

test("more loads take more water, heat and fuel", () => {
	const busy = rowsOf(
		boiling({ births_per_day: 60, soak_capacity_kits: 1, plan_confidence: 0.9 }),
		FILE,
	)[0];
	expect(numberIn(busy, "litres")).toBe(90);
	expect(numberIn(busy, "batches")).toBe(5);
});

test("electricity is counted in kWh, by its own share", () => {
	const [row] = rowsOf(boiling({ fuel: "electric" }), FILE);
	expect([valueIn(row?.fuel), valueIn(row?.fuel_measure)]).toEqual(["electric", "kWh"]);
	const net = 3 * 0.85;
	const minutes = (numberIn(row, "heat_minutes") as number) + 2;
	expectWithin(numberIn(row, "fuel_quantity"), (net * minutes) / 60 / 0.85, 1e-9, "kWh");
});

test("a share typed in takes the fuel's place", () => {
	const [half] = rowsOf(boiling({ stove_efficiency: 0.4 }), FILE);
	const [full] = rowsOf(boiling({ heat_kw: 6 }), FILE);
	expectWithin(
		numberIn(half, "heat_minutes"),
		numberIn(full, "heat_minutes") as number,
		1e-9,
		"min",
	);
	expectWithin(
		2 * (numberIn(half, "fuel_quantity") as number),
		numberIn(full, "fuel_quantity") as number,
		1e-9,
		"kg",
	);
});

test("the unit's own reading of a pot takes the cooling rate's place", () => {
	const reading = { cooling_first_c: 95, cooling_second_c: 45, cooling_hours: 5, room_c: 25 };
	const rate = Math.log(70 / 20) / 5;
	const [row] = rowsOf(boiling({ ...reading, cooling_per_hour: 1 }), FILE);
	expectWithin(numberIn(row, "cool_minutes"), (60 * Math.log(74.9968 / 12)) / rate, 1e-2, "min");
});

describe("how hot the fire is", () => {
	const heating = (settings: Record<string, string | number>) =>
		numberIn(rowsOf(boiling({ heat_kw: "", ...settings }), FILE)[0], "heat_minutes") as number;

	test("a pot that was measured says it, whatever else is entered", () => {
		// 30 L of which each 10 L take 50 minutes, and what boils away: as one pot, but for that.
		const net = (10 * 4.186 * (99.9968 - 22)) / 3000;
		const litres = 30 + (2 * net * 60) / 2257;
		for (const heat_kw of ["", 3])
			expectWithin(heating({ heat_kw, boil_minutes_measured: 50 }), 5 * litres, 1e-3, "min");
	});

	test("nothing known: an estimate for the fuel, said to be one, and no dead end", () => {
		const made = boiling({ heat_kw: "" });
		const found = made.problems.filter(({ code }) => code === "heat-estimated");
		expect(found.map(({ weight, column }) => [weight, column])).toEqual([
			["advice", "boil_minutes_measured"],
		]);
		expectWithin(heating({}), heating({ heat_kw: 3 }), 1e-9, "min");
		expectWithin(
			heating({ fuel: "electric" }),
			heating({ fuel: "electric", heat_kw: 1.5 }),
			1e-9,
			"min",
		);
		for (const known of [{ heat_kw: 3 }, { heat_kw: "", boil_minutes_measured: 50 }])
			expect(problemCodes(boiling(known))).not.toContain("heat-estimated");
	});
});

describe("what leaves the boiling without times, and not the plan", () => {
	test.each([
		["no heat", { heat_kw: 0 }, "no-heat", "error", "heat_kw"],
		["heat that nobody can read", { heat_kw: "hot" }, "bad-cell", "error", "Heat the stove gives"],
		["pots nobody can read", { pots_on_stove: "two" }, "bad-cell", "error", "Pots on a stove"],
		["a room as warm as wanted", { room_c: 37 }, "room-too-warm", "error", "room_c"],
		["a room warmer than wanted", { room_c: 45 }, "room-too-warm", "error", "room_c"],
		["half a reading", { cooling_first_c: 95 }, "not-given", "advice", "cooling_second_c"],
		[
			"a reading that does not cool",
			{ cooling_first_c: 60, cooling_second_c: 70, cooling_hours: 2 },
			"reading-not-cooling",
			"error",
			"cooling_first_c",
		],
	])("%s", (_what, settings, code, weight, key) => {
		const made = boiling(settings as Record<string, string | number>);
		expect(made.made).toBe(true);
		const found = made.problems.filter((p) => p.code === code);
		expect(found.map((p) => p.weight)).toContain(weight);
		expect(found.map((p) => `${p.column} ${p.message}`).join(" ")).toContain(key);
		expect(problemCodes(made, "error")).toEqual(weight === "error" ? [code] : []);
		expect(codesOf(rowsOf(made, FILE)[0]?.light_by)).toContain(code);
		expect(rowsOf(made, "tonight.csv")).toEqual([]);
	});
});

test("water drawn at the boil needs no heating", () => {
	expect(numberIn(rowsOf(boiling({ tap_water_c: 100 }), FILE)[0], "heat_minutes")).toBe(0);
});

test("after each use the rounds have no hours, and so no water has a time", () => {
	const made = boiling({ reprocessing: "after_each_use", boil_for: "after_use" });
	expect(rowsOf(made, FILE)).toEqual([]);
	expect(numberIn(rowsOf(made, "day-plan.csv")[0], "boiled_litres_set_aside")).toBe(60);
});

test("a reading of a pot that grew warmer is named by its place", () => {
	const reading = { cooling_first_c: 40, cooling_second_c: 60, cooling_hours: 2 };
	const named = boiling(reading).problems.filter(({ column }) => column === "cooling_first_c");
	expect(new Set(named.map(({ file }) => file))).toEqual(new Set(["unit.csv"]));
});
