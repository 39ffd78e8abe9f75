import { describe, expect, test } from "vitest";
import { soaks } from "../../../src/core/rounds/loads.ts";
import type { Step } from "../../../src/core/rounds/step.ts";
import {
	DESCALE_STEP,
	firstRinse,
	lastRinse,
	loadsOf,
	type PlannedRound,
	RINSE_STEP,
	timedSteps,
} from "../../../src/core/rounds/timedSteps.ts";

const step = (
	name: string,
	basis: Step["basis"],
	minutes: number,
	hands_on: "yes" | "no" = "yes",
): Step => ({ step: name, basis, minutes, hands_on });
const list = [
	step("prepare", "round", 20),
	step("wash", "kit", 50),
	step("soak", "load", 20, "no"),
	step("rinse", "load", 5),
	step("store", "round", 10),
];
const round: PlannedRound = {
	start: 420,
	kits: 1,
	workers: 1,
	loads: soaks(3),
	descale: null,
	settleMinutes: 0,
};
const timesOf = (steps: readonly Step[], change: Partial<PlannedRound>) =>
	timedSteps(steps, { ...round, ...change }).map((s) => [s.step, s.startsAt, s.endsAt, s.kits]);

test("one kit: one load, one step after the other", () => {
	expect(timesOf(list, {})).toEqual([
		["prepare", 420, 440, 1],
		["wash", 440, 490, 1],
		["soak", 490, 510, 1],
		["rinse", 510, 515, 1],
		["store", 515, 525, 1],
	]);
});

test("five kits, two people: work by the kit is shared, loads are gone through in turn", () => {
	expect(timesOf(list, { kits: 5, workers: 2 })).toEqual([
		["prepare", 420, 440, 5],
		["wash", 440, 565, 5],
		["soak (load 1 of 2)", 565, 585, 3],
		["rinse (load 1 of 2)", 585, 590, 3],
		["soak (load 2 of 2)", 590, 610, 2],
		["rinse (load 2 of 2)", 610, 615, 2],
		["store", 615, 625, 5],
	]);
});

test("more people than kits share a kit's work, not a round's or a load's", () => {
	expect(timedSteps(list, { ...round, workers: 5 }).at(-1)?.endsAt).toBe(420 + 20 + 10 + 25 + 10);
});

test.each([
	[3, 3, 1],
	[4, 3, 2],
	[6, 3, 2],
	[7, 3, 3],
	[4, 1, 4],
])("%d kits, %d in a soak: %d loads", (kits, kitsInLoad, loads) => {
	const timed = timedSteps(list, { ...round, kits, loads: soaks(kitsInLoad) });
	expect(loadsOf(timed, "chlorine")).toBe(loads);
	expect(timed.filter((s) => s.step.startsWith("soak"))).toHaveLength(loads);
});

describe("the first rinse", () => {
	test.each([
		["ends the first load's soak", list, 4, 420 + 20 + 200 + 20],
		[
			"waits for the soak, whatever the load begins with",
			[step("put under", "load", 5), step("soak", "load", 20, "no"), step("rinse", "load", 9)],
			4,
			420 + 5 + 20,
		],
		[
			"begins the first load where all are soaked together before",
			[step("soak", "round", 20, "no"), step("rinse", "load", 9)],
			4,
			420 + 20,
		],
		[
			"waits for no powder that dissolves before",
			[
				{ ...step("dissolve", "round", 15, "no"), method: "chlorine" },
				step("soak", "load", 20, "no"),
			],
			1,
			420 + 15 + 20,
		],
		["is the end of the round where nothing goes by load", [step("all", "round", 45)], 4, 465],
	] satisfies [string, Step[], number, number][])("%s", (_what, steps, kits, minute) => {
		expect(firstRinse(timedSteps(steps, { ...round, kits }))).toBe(minute);
	});

	test("there is none without steps", () => {
		expect(firstRinse([])).toBeUndefined();
		expect(loadsOf([], "chlorine")).toBe(0);
	});
});

test("loads of two methods are gone through in the order of their steps", () => {
	const both: Step[] = [
		step("lay out", "load", 1),
		{ ...step("boil", "load", 15, "no"), method: "boiling" },
		{ ...step("soak", "load", 20, "no"), method: "chlorine" },
		step("store", "round", 10),
	];
	const loads = [
		{ method: "chlorine", kits: 3 },
		{ method: "boiling", kits: 2 },
	] as const;
	const timed = timedSteps(both, { ...round, kits: 4, loads });
	// The first load of chlorine has been soaked.
	expect(firstRinse(timed)).toBe(473);
	expect(timed.map((s) => `${s.startsAt} ${s.step}, ${s.kits} ${s.method} ${s.load}`)).toEqual([
		"420 lay out (load 1 of 2), 2 boiling 1",
		"421 boil (load 1 of 2), 2 boiling 1",
		"436 lay out (load 2 of 2), 2 boiling 2",
		"437 boil (load 2 of 2), 2 boiling 2",
		"452 lay out (load 1 of 2), 3 chlorine 1",
		"453 soak (load 1 of 2), 3 chlorine 1",
		"473 lay out (load 2 of 2), 1 chlorine 2",
		"474 soak (load 2 of 2), 1 chlorine 2",
		"494 store, 4 null 0",
	]);
	expect([loadsOf(timed, "boiling"), loadsOf(timed, "steam")]).toEqual([2, 0]);
	expect(lastRinse(timed)).toBe(494);
});

test("the last rinse ends the last load of the soak, or the round where nothing is soaked", () => {
	expect(lastRinse(timedSteps(list, { ...round, kits: 4 }))).toBe(420 + 20 + 200 + 2 * 25);
	const boiled = timedSteps(list, { ...round, loads: [{ method: "boiling", kits: 3 }] });
	expect(lastRinse(boiled)).toBe(525);
	expect(lastRinse([])).toBeUndefined();
	const mixed: Step[] = [...list, { ...step("pour away", "round", 10), method: "chlorine" }];
	expect(lastRinse(timedSteps(mixed, round))).toBe(515);
});

test("the bath says that chlorine is kept away, and the rinse that it is opened only after it", () => {
	expect(DESCALE_STEP).toMatch(/diluted vinegar.*never with chlorine/);
	expect(RINSE_STEP).toMatch(/no smell of vinegar.*chlorine only then/);
});

test("descaling comes before the soak, and its rinse at once after it", () => {
	const descale = { minutes: 10, rinseMinutes: 5 };
	expect(timesOf(list, { kits: 4, descale })).toEqual([
		["prepare", 420, 440, 4],
		["wash", 440, 640, 4],
		[DESCALE_STEP, 640, 650, 4],
		[RINSE_STEP, 650, 655, 4],
		["soak (load 1 of 2)", 655, 675, 3],
		["rinse (load 1 of 2)", 675, 680, 3],
		["soak (load 2 of 2)", 680, 700, 1],
		["rinse (load 2 of 2)", 700, 705, 1],
		["store", 705, 715, 4],
	]);
	const [bath, rinse] = timedSteps(list, { ...round, descale })
		.filter((s) => s.load === 0)
		.slice(2);
	expect([bath?.handsOn, rinse?.handsOn]).toEqual(["no", "yes"]);
});
