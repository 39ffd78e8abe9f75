import { describe, expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { soaks } from "../../../src/core/rounds/loads.ts";
import { mixingSteps } from "../../../src/core/rounds/mixingSteps.ts";
import type { Step } from "../../../src/core/rounds/step.ts";
import {
	DESCALE_STEP,
	type PlannedRound,
	RINSE_STEP,
	SETTLE_STEP,
	timedSteps,
} from "../../../src/core/rounds/timedSteps.ts";
import { columnOf, contentOf } from "../contentOf.ts";
import { problemCodes } from "../planCells.ts";
import { smallUnit, unitWith } from "../smallUnit.ts";

const list: Step[] = [
	{ step: "gloves", basis: "round", minutes: 5, hands_on: "yes" },
	{ step: "mix", basis: "round", minutes: 10, hands_on: "yes", method: "chlorine" },
	{ step: "wash", basis: "kit", minutes: 15, hands_on: "yes", method: null },
	{ step: "soak", basis: "load", minutes: 20, hands_on: "no", method: "chlorine" },
	{ step: "pour away", basis: "round", minutes: 5, hands_on: "yes", method: "chlorine" },
];
const round: PlannedRound = {
	start: 420,
	kits: 1,
	workers: 1,
	loads: soaks(3),
	descale: null,
	settleMinutes: 0,
};
const SETTLES = "mix; let it settle, and use only the clear liquid";
const timesOf = (change: Partial<PlannedRound>) =>
	timedSteps(list, { ...round, ...change }).map((s) => [s.step, s.startsAt, s.endsAt]);

test("what is mixed: once a round, for chlorine alone, before the soak; nothing where no step says so", () => {
	expect(mixingSteps(list).map(({ step }) => step)).toEqual(["mix"]);
	expect(mixingSteps(list.map(({ method, ...step }) => step))).toEqual([]);
	expect(mixingSteps(list.filter(({ basis }) => basis !== "load"))).toEqual([]);
	const [, mix, wash, soak] = list as [Step, Step, Step, Step];
	const of = (...before: Step[]) => mixingSteps([...before, soak]).map(({ step }) => step);
	expect(of(mix, { ...mix, step: "stir" })).toEqual(["mix", "stir"]);
	expect(of({ ...mix, hands_on: "no" }, { ...mix, basis: "kit" }, wash)).toEqual([]);
	const boil: Step = { ...soak, method: "boiling" };
	expect(mixingSteps([boil, mix, soak]).map(({ step }) => step)).toEqual(["mix"]);
	expect(mixingSteps([mix, boil])).toEqual([]);
	expect(mixingSteps([mix, { ...soak, method: null }])).toEqual([mix]);
});

test("where no step is counted by load, the descaling comes before all of them", () => {
	const steps = list.filter(({ basis }) => basis !== "load");
	const descale = { minutes: 10, rinseMinutes: 5 };
	expect(timedSteps(steps, { ...round, descale }).map(({ step }) => step)).toEqual([
		DESCALE_STEP,
		RINSE_STEP,
		"gloves",
		"mix",
		"wash",
		"pour away",
	]);
});

describe("in a round with descaling", () => {
	const descale = { minutes: 10, rinseMinutes: 5 };
	test("chlorine is opened after the vinegar is rinsed off", () => {
		expect(timesOf({ descale })).toEqual([
			["gloves", 420, 425],
			["wash", 425, 440],
			[DESCALE_STEP, 440, 450],
			[RINSE_STEP, 450, 455],
			["mix", 455, 465],
			["soak", 465, 485],
			["pour away", 485, 490],
		]);
	});

	test("a powder's deposit is waited for, which keeps nobody busy", () => {
		const timed = timedSteps(list, { ...round, descale, settleMinutes: 30 });
		expect(timed.find(({ step }) => step === SETTLE_STEP)?.handsOn).toBe("no");
		expect(timesOf({ descale, settleMinutes: 30 }).slice(4, 7)).toEqual([
			[SETTLES, 455, 465],
			[SETTLE_STEP, 465, 495],
			["soak", 495, 515],
		]);
	});
});

describe("a powder that must settle is mixed so much earlier", () => {
	test("loads that are boiled first give it time: it must have sunk when the first load of chlorine goes in", () => {
		const boil: Step = {
			step: "boil",
			basis: "load",
			minutes: 12,
			hands_on: "no",
			method: "boiling",
		};
		const steps = [...list.slice(0, 3), boil, ...list.slice(3)];
		const loads = [...soaks(3), { method: "boiling" as const, kits: 3 }];
		const timed = timedSteps(steps, { ...round, loads, settleMinutes: 30 });
		// Washing takes 15 minutes of the 30, and boiling 12.
		expect(timed.map((s) => [s.step, s.startsAt]).slice(0, 5)).toEqual([
			["gloves", 417],
			[SETTLES, 422],
			["wash", 435],
			["boil", 450],
			["soak", 462],
		]);
	});

	test.each([
		["not at all where the washing takes as long", { kits: 2 }, 420, 425, 435],
		["before the round, with the gloves, by what is lacking", {}, 405, 410, 435],
		["not into the day before: the rest is waited for", { start: 10 }, 0, 5, 30],
	])("%s", (_what, change: Partial<PlannedRound>, gloves, mix, wash) => {
		const timed = timesOf({ settleMinutes: 30, ...change });
		expect(timed.slice(0, 3)).toEqual([
			["gloves", gloves, gloves + 5],
			[SETTLES, mix, mix + 10],
			["wash", wash, wash + 15 * (change.kits ?? 1)],
		]);
		const [, mixed, washed] = timed as [
			unknown,
			[string, number, number],
			[string, number, number],
		];
		expect(washed[2] - mixed[2]).toBeGreaterThanOrEqual(30);
	});
});

describe("in the plan", () => {
	const steps = ["gloves,round,5,yes,", "mix,round,10,yes,chlorine", "wash and dry,kit,5,yes,"];
	const soak = ["soak,load,20,no,chlorine", "rinse,load,5,yes,chlorine"];
	const files = (product: string) => ({
		"steps.csv": ["step,basis,minutes,hands_on,method", ...steps, ...soak].join("\n"),
		"chlorine.csv": `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
			${product},,0,0,yes`,
	});
	test.each([
		["liquid,liquid,3.5,pct_w_v", "07:05", "mix"],
		["powder,powder,70,pct_w_w", "06:45", SETTLES],
		["tablets,tablet,1.5,g_per_tablet", "07:05", "mix"],
	])("%s is mixed at %s", (product, at, name) => {
		const made = plan(unitWith({ descale_every_rounds: 0 }, files(product)));
		expect(contentOf(made, "run-sheet.csv", "step", "starts")[1]).toEqual([name, at]);
	});

	test("as long as the setting says", () => {
		const settings = { descale_every_rounds: 0, settle_minutes: 40 };
		const made = plan(unitWith(settings, files("powder,powder,70,pct_w_w")));
		expect(columnOf(made, "run-sheet.csv", "starts").slice(0, 3)).toEqual([
			"06:30",
			"06:35",
			"07:15",
		]);
	});

	test("where no step says that it mixes, it is asked for, unless nothing is ever descaled", () => {
		const code = "mixing-not-marked";
		const unmarked = {
			"steps.csv":
				"step,basis,minutes,hands_on\nmix and wash,kit,5,yes\nsoak,load,20,no\nrinse and dry,load,5,yes",
		};
		expect(problemCodes(plan(smallUnit(unmarked)), "advice")).toContain(code);
		expect(problemCodes(plan(unitWith({ descale_every_rounds: 0 }, unmarked)))).not.toContain(code);
		expect(problemCodes(plan(smallUnit()))).not.toContain(code);
		const boiled = {
			"steps.csv": "step,basis,minutes,hands_on,method\nwash,kit,5,yes,\nboil,load,20,no,boiling",
		};
		expect(problemCodes(plan(unitWith({ method: "boiling" }, boiled)))).not.toContain(code);
		const without = { "steps.csv": "step,basis,minutes,hands_on\nwash and soak,kit,5,yes" };
		expect(problemCodes(plan(smallUnit(without)))).not.toContain(code);
	});
});
