import { describe, expect, test } from "vitest";
import { type LevelOfDay, setAside } from "../../../../src/core/counts/counts.ts";
import { negativeBinomial } from "../../../../src/core/counts/negativeBinomial.ts";
import { poisson } from "../../../../src/core/counts/poisson.ts";
import { spanShape } from "../../../../src/core/counts/spanShape.ts";
import { plus } from "../../../../src/core/counts/sumOf.ts";
import { dayAhead } from "../../../../src/core/forecast/forecast.ts";
import { registerFigures } from "../../../../src/core/plan/births/registerFigures.ts";
import { type Plan, plan } from "../../../../src/core/plan/plan.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { addDays } from "../../../../src/core/values/date.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { columnOf, contentOf } from "../../contentOf.ts";
import { recordsOf, repeated } from "../../forecast/register.ts";
import { numberIn, problemCodes, rowsOf, totalOf, valueIn } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

const start = "2027-03-01";
/** Twelve weeks up to the day before the plan, Mondays busy, calm fortnights and busy ones; the settings say 6 a day. */
const calm = [4, 1, 2, 1, 2, 0, 1];
const busy = [14, 5, 6, 3, 8, 2, 5];
const counts = repeated([...calm, ...calm, ...busy, ...busy], 3);
const records = recordsOf(addDays(start, -counts.length), counts);

type Settings = Record<string, string | number>;
const workbook = (settings: Settings, births = "", register = records) =>
	unitWith(settings, {
		"records.csv": register,
		"births.csv": `date,births,note\n${births}`,
	});
const made = (settings: Settings = {}, births = "", register = records) =>
	plan(workbook(settings, births, register));
const expected = (of: Plan) => columnOf(of, "day-plan.csv", "births_expected");

/** What the register says of the days of the plan, worked out apart from it. */
function ahead(days: number) {
	const { forecast } = registerFigures(readWorkbook(workbook({})), start);
	const learned = valueIn(forecast);
	return Array.from({ length: days }, (_, day) => dayAhead(learned as never, addDays(start, day)));
}

describe("where a day's births come from", () => {
	test("the forecast, where the day has no figure of its own", () => {
		expect(expected(made())).toEqual(ahead(7).map(({ mean }) => mean));
		expect(new Set(columnOf(made(), "forecast.csv", "taken_from"))).toEqual(
			new Set(["forecast from the register"]),
		);
	});

	test("the user's figure always wins, nought included", () => {
		const own = made({}, "2027-03-02,11.5,\n2027-03-04,0,\n2027-03-05,,");
		const means = ahead(7).map(({ mean }) => mean);
		expect(expected(own)).toEqual(means.with(1, 11.5).with(3, 0));
		expect(columnOf(own, "forecast.csv", "taken_from").slice(0, 5)).toEqual([
			"forecast from the register",
			"your figure",
			"forecast from the register",
			"your figure",
			"forecast from the register",
		]);
	});

	test.each<[string, Settings, string]>([
		["switched off", { births_from_register: "no" }, records],
		["no records", {}, "date,births,kits_used"],
		["only days to come", {}, recordsOf("2027-04-01", repeated([5], 50))],
	])("%s: births a day from the settings", (_what, settings, register) => {
		const found = made(settings, "", register);
		expect(expected(found)).toEqual(repeated([6], 7));
		expect(new Set(columnOf(found, "forecast.csv", "taken_from"))).toEqual(
			new Set(["births a day"]),
		);
		expect(found.made).toBe(true);
	});

	test.each<[string, number[]]>([
		["thirteen days", repeated([5], 13)],
		["nine births in a season", [...repeated([0], 90), 9]],
		["no births", repeated([0], 50)],
	])("%s: births a day from the settings, moved by the register", (_what, days) => {
		const found = made({}, "", recordsOf(addDays(start, -days.length), days));
		const births = days.reduce((sum, day) => sum + day, 0);
		const week = (expected(found) as number[]).reduce((sum, day) => sum + day, 0);
		expectWithin(week / 7, (6 * 7 + births) / (7 + days.length), 0.02, "births a day"); // weekdays hardly differ
		expect(new Set(columnOf(found, "forecast.csv", "taken_from"))).toEqual(
			new Set(["births a day, moved by the register"]),
		);
		expect(problemCodes(found)).toContain("short-register");
	});

	test("a day whose own figure cannot be read has none, forecast or not", () => {
		const found = made({}, "2027-03-02,eleven,");
		expect(expected(found)[1]).toBeUndefined();
		expect(found.made).toBe(false);
	});
});

describe("what is set aside with a forecast", () => {
	test("a day: negative binomial with its own mean and size", () => {
		const aside = columnOf(made(), "day-plan.csv", "births_set_aside");
		expect(aside).toEqual(
			ahead(7).map((day) => setAside(negativeBinomial(spanShape([day]), day.mean), 0.95)),
		);
	});

	test.each<[string, string, number[]]>([
		["all of it forecast", "", []],
		["two days of one's own", "2027-03-02,11.5,\n2027-03-04,2,", [1, 3]],
		["the last day one's own", "2027-03-07,9,", [6]],
		[
			"all but the first one's own",
			[1, 2, 3, 4, 5, 6].map((d) => `2027-03-0${d + 1},4,`).join("\n"),
			[1, 2, 3, 4, 5, 6],
		],
	])("a week, %s: Poisson and negative binomial added up exactly", (_what, births, own) => {
		const found = made({}, births);
		const means = expected(found) as number[];
		const days = ahead(7);
		expect(days[0]?.levelShape).toBeGreaterThan(1.05 * (days[6]?.levelShape as number)); // the days are not known alike
		const forecastDays = [0, 1, 2, 3, 4, 5, 6].filter((day) => !own.includes(day));
		const sum = (list: number[]) => list.reduce((all, day) => all + (means[day] as number), 0);
		const size = spanShape(forecastDays.map((day) => days[day] as LevelOfDay));
		for (const plan_confidence of [0.5, 0.8, 0.95, 0.99]) {
			const total = totalOf(made({ plan_confidence }, births), "births");
			const exact = plus(poisson(sum(own)), negativeBinomial(size, sum(forecastDays)));
			expect(numberIn(total, "set_aside")).toBe(setAside(exact, plan_confidence));
			expectWithin(numberIn(total, "expected"), sum([...own, ...forecastDays]), 1e-9, "births");
		}
	});

	test("kits used have the births' size", () => {
		const aside = columnOf(
			made({ kits_used_per_100_births: 50 }),
			"day-plan.csv",
			"births_expected",
		);
		const total = totalOf(made({ kits_used_per_100_births: 50 }), "kits_used");
		const mean = (aside as number[]).reduce((all, day) => all + day / 2, 0);
		const size = spanShape(ahead(7));
		expect(numberIn(total, "set_aside")).toBe(setAside(negativeBinomial(size, mean), 0.95));
	});

	test("is more than Poisson where the level moves", () => {
		const moving = repeated([1, 2, 1, 2, 1, 2, 1, 12, 14, 11, 13, 12, 14, 12], 6);
		const found = made({}, "", recordsOf(addDays(start, -moving.length), moving));
		const total = totalOf(found, "births");
		const mean = numberIn(total, "expected") as number;
		expect(numberIn(total, "set_aside")).toBeGreaterThan(setAside(poisson(mean), 0.95));
	});

	test("the ranges are those of the day's counts, and half lies inside nine of ten", () => {
		const rows = contentOf(made(), "forecast.csv", "low_50", "high_50", "low_90", "high_90");
		const quantiles = ahead(7).map((day) =>
			[0.25, 0.75, 0.05, 0.95].map((level) =>
				setAside(negativeBinomial(spanShape([day]), day.mean), level),
			),
		);
		expect(rows).toEqual(quantiles);
		const [day] = rowsOf(made(), "forecast.csv");
		for (const [column, end, label] of [
			["low_50", "Lower", "50 of 100 such days, from"],
			["high_50", "Upper", "50 of 100 such days, to"],
			["low_90", "Lower", "90 of 100 such days, from"],
			["high_90", "Upper", "90 of 100 such days, to"],
		] as const) {
			const origin = day?.[column]?.origin;
			const of = origin?.kind === "computed" ? origin.calculation : undefined;
			expect([of?.label, of?.formula]).toEqual([
				label,
				`${end} end of the interval with equal chances outside on both sides.`,
			]);
		}
	});
});

describe("far from the register, less is known and no less is set aside", () => {
	const moving = repeated([2, 2, 2, 2, 2, 12, 11, 10, 9, 8], 20);
	test.each([0, 13, 60, 300, 3000])("a register that ended %d days before the plan", (gap) => {
		const found = made({}, "", recordsOf(addDays(start, -moving.length - gap), moving));
		const [near, far] = [
			totalOf(found, "births"),
			columnOf(found, "day-plan.csv", "births_set_aside"),
		];
		const mean = numberIn(near, "expected") as number;
		expect(found.made).toBe(true);
		expect(numberIn(near, "set_aside")).toBeGreaterThanOrEqual(setAside(poisson(mean), 0.95));
		for (const births of far)
			expect(births).toBeGreaterThanOrEqual(setAside(poisson(mean / 7), 0.9));
		expect(problemCodes(found).includes("register-ended")).toBe(gap >= 14);
	});

	test("a plan of a year is made, and sets aside at least what Poisson would", () => {
		const found = made({ plan_days: 366 }, "", recordsOf(addDays(start, -moving.length), moving));
		const total = totalOf(found, "births");
		const mean = numberIn(total, "expected") as number;
		expect(found.made).toBe(true);
		expect(numberIn(total, "set_aside")).toBeGreaterThan(setAside(poisson(mean), 0.95));
	});

	test("a unit that was closed for a year", () => {
		const closed = [...repeated([5, 4], 10), ...repeated([0], 365)];
		const found = made({}, "", recordsOf(addDays(start, -closed.length), closed));
		expect(found.made).toBe(true);
	});
});

describe("a register that is not in order", () => {
	test.each<[string, string, string[]]>([
		[
			"a day listed twice",
			`${records}\n2027-02-10,4,`,
			["doubled-row", "doubled-row", "level-shift"],
		],
		["a huge day", records.replace(/(2027-01-12),\d+/, "$1,400"), ["odd-day", "level-shift"]],
		["days to come", `${records}\n2027-03-04,5,`, ["record-after-start", "level-shift"]],
		["a day of the wrong century", `${records}\n1927-02-10,5,`, ["long-gap", "level-shift"]],
		["more than any unit has", `${records}\n2026-12-01,5000,`, ["bad-cell", "level-shift"]],
		["a gap", `${records}\n2026-11-01,4,`, ["long-gap", "level-shift"]],
	])("%s: said, and the plan is made", (_what, register, codes) => {
		const found = made({}, "", register);
		const said = found.problems.filter((p) => p.file === "records.csv").map((p) => p.code);
		expect(said).toEqual(codes);
		expect(found.made).toBe(true);
		for (const births of expected(found)) expect(Number.isFinite(births)).toBe(true);
	});

	test("the order of its lines does not matter", () => {
		const [head = "", ...lines] = records.split("\n");
		const turned = [head, ...lines.reverse()].join("\n");
		expect(expected(made({}, "", turned))).toEqual(expected(made()));
		expect(problemCodes(made({}, "", turned))).toEqual(problemCodes(made()));
	});
});

test("the scorecard: three ways over the same days, in words", () => {
	const rows = contentOf(made(), "scorecard.csv", "way", "days", "chance_given", "remark");
	expect(rows.map(([way, days]) => [way, days])).toEqual([
		["Forecast", 77],
		["Plain mean", 77],
		["Same weekday last week", 77],
	]);
	const chances = rows.map(([, , chance]) => chance as number);
	for (const chance of chances) expect(chance > 0 && chance < 100).toBe(true);
	const best = (chances[0] as number) >= Math.max(...chances.slice(1));
	expect(rows[0]?.[3]).toMatch(best ? /at least as well as both/ : /A simple way did better/);
	expect(contentOf(made({}, "", "date,births,kits_used"), "scorecard.csv", "way")).toEqual([]);
});
