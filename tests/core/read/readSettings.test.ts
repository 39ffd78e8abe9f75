import { describe, expect, test } from "vitest";
import { problemsOf } from "../../../src/core/outcome.ts";
import { readSettings } from "../../../src/core/read/readSettings.ts";
import { settings as definitions, type SettingKey } from "../../../src/core/sheets/settings.ts";
import { tableOf } from "../smallUnit.ts";

const read = (...lines: string[]) => readSettings(tableOf(["key,value", ...lines].join("\n")));
const outcome = (key: SettingKey, ...lines: string[]) => read(...lines).settings[key].outcome;

test("a setting that there is none is told by its key; spaces are no value", () => {
	expect(read("plan_dyas,7").problems).toContainEqual(
		expect.objectContaining({ code: "unknown-setting", line: 2, column: "key", weight: "advice" }),
	);
	const spaces = (key: SettingKey) =>
		readSettings({ header: ["key", "value"], rows: [[key, "   "]] }).settings[key].outcome;
	expect(spaces("plan_days")).toEqual({ ok: true, value: 7 });
	expect(spaces("plan_start")).toMatchObject({
		ok: false,
		problems: [{ code: "not-given", line: null, column: "plan_start", received: "" }],
	});
});

describe("defaults", () => {
	const defaults: Partial<Record<SettingKey, string | number>> = {
		plan_days: 7,
		plan_confidence: 0.95,
		kits_used_per_100_births: 10,
		delivery_beds: 2,
		spare_kits: 1,
		unmet_per_1000_uses: 1,
		reprocessing: "in_rounds",
		ready_life_days: 7,
		target_strength_pct: 0.5,
		soak_minutes: 20,
		solution_made: "each_round",
		solution_life_hours: 24,
		soak_fill_litres: 5,
		soak_container_litres: 10,
		soak_capacity_kits: 3,
		kit_displacement_litres: 0.6,
		carry_in_ml_per_kit: 30,
		measure_step_ml: 10,
		measure_step_g: 1,
		soapy_water_litres: 5,
		plain_rinse_litres: 5,
		rinse_buckets: 3,
		bucket_fill_litres: 10,
		rinse_below_c: 37,
		pot_litres: 10,
		pots: 2,
		fuel: "charcoal_traditional",
		tap_water_c: 22,
		room_c: 25,
		cooling_per_hour: 0.25,
		altitude_m: 0,
		descale_every_rounds: 7,
		descale_fill_litres: 2,
		vinegar_acid_pct: 5,
		descale_acid_pct: 2.5,
		descale_minutes: 10,
		workers_per_round: 1,
		store_c: 25,
		review_days: 7,
	};
	test.each(Object.entries(defaults) as [SettingKey, string | number][])(
		"%s is %s where nothing is given",
		(key, value) => {
			expect(outcome(key)).toEqual({ ok: true, value });
			expect(outcome(key, `${key},`)).toEqual({ ok: true, value });
			expect(read().settings[key].origin.kind).toBe("default");
		},
	);

	test.each(["plan_start", "births_per_day"] as const)("%s has no default and no value", (key) => {
		expect(problemsOf(outcome(key))).toMatchObject([
			{ code: "not-given", file: "unit.csv", column: key },
		]);
	});

	test("a setting that is not given is no problem of the reading", () => {
		expect(read().problems).toEqual([]);
	});
});

describe("typed settings", () => {
	test("a typed value knows its line", () => {
		const { settings } = read("unit_name,Ward 3", "births_per_day,6");
		expect(settings.births_per_day).toMatchObject({
			outcome: { ok: true, value: 6 },
			origin: { kind: "typed", place: { file: "unit.csv", line: 3, column: "value" } },
		});
	});

	test.each([
		["births_per_day", "two"],
		["births_per_day", "-1"],
		["births_per_day", "1e9"],
		["births_per_day", "1,000"],
		["plan_days", "7.5"],
		["plan_days", "0"],
		["plan_start", "2027-02-29"],
		["plan_confidence", "95"],
		["plan_confidence", "1"],
		["reprocessing", "sometimes"],
		["solution_life_hours", "25"],
		["target_strength_pct", "5000"],
	] as const)("%s of %s is refused, with the text that was found", (key, text) => {
		const { settings, problems } = readSettings({ header: ["key", "value"], rows: [[key, text]] });
		expect(problemsOf(settings[key].outcome)).toMatchObject([
			{ code: "bad-cell", received: text, line: 2 },
		]);
		expect(problems).toHaveLength(1);
	});

	test("a setting given twice has no value, and both lines are named", () => {
		const { settings, problems } = read("births_per_day,6", "births_per_day,7");
		expect(settings.births_per_day.outcome.ok).toBe(false);
		expect(problems.map((p) => [p.code, p.line])).toEqual([
			["doubled-row", 2],
			["doubled-row", 3],
		]);
	});

	test("so is an unknown one", () => {
		expect(read("beds_there,6", "beds_there,7").problems.map((p) => [p.code, p.line])).toEqual([
			["doubled-row", 2],
			["doubled-row", 3],
		]);
	});

	test.each(["bed_count", "constructor", "toString", "__proto__"])(
		"an unknown setting %s is kept and not used",
		(key) => {
			expect(read(`${key},5`).problems).toMatchObject([
				{ code: "unknown-setting", weight: "advice", received: key, line: 2 },
			]);
		},
	);

	test("a value without a key is a problem of its line", () => {
		expect(read(",5").problems).toMatchObject([{ code: "bad-cell", line: 2, column: "key" }]);
	});

	test("an absent file leaves every setting at its default and says so", () => {
		const { problems, settings } = readSettings(undefined);
		expect(problems).toMatchObject([{ code: "missing-file" }]);
		expect(settings.plan_days.outcome).toEqual({ ok: true, value: 7 });
	});

	test("every default lies inside its own limits", () => {
		for (const [key, { value, fallback }] of Object.entries(definitions) as [
			string,
			(typeof definitions)["plan_days"],
		][])
			if (fallback !== undefined)
				expect(value.schema.safeParse(value.write(fallback)), key).toMatchObject({
					success: true,
					data: fallback,
				});
	});
});
