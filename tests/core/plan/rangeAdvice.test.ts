import { describe, expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { unitWith } from "../smallUnit.ts";

const adviceOf = (settings: Record<string, string | number>) =>
	plan(unitWith(settings)).problems.filter(({ code }) => code === "outside-sources");

describe("a setting outside what its sources name", () => {
	test.each([
		["soak_minutes", { soak_minutes: 9 }, "9 min", /10 .*20 .*30 .*; 3 stands only for/],
		["soak_minutes", { soak_minutes: 31 }, "31 min", /up to 30 minutes/],
		[
			"target_strength_pct",
			{ target_strength_pct: 0.09, solution_water: "boiled" },
			"0.09 % available chlorine",
			/0\.5 % .*\(from memory for devices\) .*0\.1 % .*0\.04 to 0\.05 % stands only/,
		],
		["target_strength_pct", { target_strength_pct: 0.6 }, "0.6 % available chlorine", /no more/],
		["solution_water", { target_strength_pct: 0.1 }, "tap", /only where .* boiled water/],
		["rinse_below_c", { rinse_below_c: 38 }, "38 °C", /warmer than the body/],
		["ready_life_days", { ready_life_days: 8 }, "8 days", /one week/],
		["boil_hold_minutes", { boil_hold_minutes: 0, altitude_m: 2001 }, "0 min", /2 or 3 minutes/],
	])("%s %j is said, with the sources, and not refused", (column, entered, received, said) => {
		const [first, ...others] = adviceOf(entered);
		expect(others).toEqual([]);
		expect(first).toMatchObject({ weight: "advice", file: "unit.csv", column, received });
		expect(first?.message).toMatch(said);
		expect(first?.message).toMatch(/Your protocol decides\.$/);
		expect(first?.message).toContain(`${received} was entered`);
	});

	test.each([
		[{}],
		[{ soak_minutes: 10, rinse_below_c: 37, ready_life_days: 7 }],
		[{ soak_minutes: 30, boil_hold_minutes: 1, altitude_m: 2500 }],
		[{ target_strength_pct: 0.1, solution_water: "boiled" }],
		[{ boil_hold_minutes: 0, altitude_m: 2000 }],
	])("%j: nothing is said within it", (entered) => {
		expect(adviceOf(entered)).toEqual([]);
	});
});

describe("what is missing among the steps", () => {
	const lackingBy = (method: string, ...steps: string[]) => {
		const rows = steps.map((step, at) => `${step},${at === 1 ? "load" : "kit"},20,no`);
		const files = { "steps.csv": ["step,basis,minutes,hands_on", ...rows].join("\n") };
		return plan(unitWith({ method }, files)).problems.flatMap(({ code, message }) =>
			code === "step-lacking" ? [message.slice(0, 12)] : [],
		);
	};
	const lacking = (...steps: string[]) => lackingBy("chlorine", ...steps);
	test.each([
		["nothing", ["wash", "soak", "rinse", "dry"], []],
		["washing", ["open", "soak", "rinse", "dry with gauze"], ["No step wash"]],
		["rinsing", ["brush in soapy water", "soak", "dry"], ["No step rins"]],
		["drying", ["laver", "tremper", "rincer"], ["No step drie"]],
		["all", ["prepare", "soak"], ["No step wash", "No step rins", "No step drie"]],
		["nothing, in French", ["nettoyer", "tremper", "rinçage", "séchage"], []],
		["nothing, in Portuguese", ["lavar", "mergulhar", "enxaguar", "secar"], []],
		["rinsing, in Portuguese", ["escovar", "imersão", "enxugar"], ["No step rins"]],
		["drying, though something is second", ["wash", "soak", "second rinse"], ["No step drie"]],
		["nothing that could be read", ["osha", "loweka"], []],
	])("%s", (_what, steps, said) => {
		expect(lacking(...steps)).toEqual(said);
	});

	test.each([
		["boiling", ["No step wash", "No step drie"]],
		["steam", ["No step wash", "No step drie"]],
		["autoclave", ["No step wash", "No step drie"]],
		["single_use", []],
	])("by %s nothing has to be rinsed, and chlorine is not named", (method, said) => {
		expect(lackingBy(method, "prepare", "pack")).toEqual(said);
		const files = { "steps.csv": "step,basis,minutes,hands_on\nprepare,kit,9,no\npack,kit,9,no" };
		const advice = plan(unitWith({ method }, files)).problems;
		const words = advice.filter(({ code }) => code === "step-lacking");
		expect(JSON.stringify(words)).not.toMatch(/chlorine|rinse/);
	});
});
