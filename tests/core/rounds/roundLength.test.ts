import { expect, test } from "vitest";
import { soaks } from "../../../src/core/rounds/loads.ts";
import { minutesOf, mostKitsWithin, roundLength } from "../../../src/core/rounds/roundLength.ts";
import { roundMinutes } from "../../../src/core/rounds/roundMinutes.ts";
import type { Step } from "../../../src/core/rounds/step.ts";
import { answerOf } from "../answerOf.ts";

const steps: Step[] = [
	{ step: "mix", basis: "round", minutes: 15, hands_on: "yes" },
	{ step: "wash", basis: "kit", minutes: 15, hands_on: "yes" },
	{ step: "pack", basis: "kit", minutes: 5, hands_on: "yes" },
	{ step: "soak", basis: "load", minutes: 20, hands_on: "no" },
];

test.each([
	[1, 1, 15 + 20 + 20],
	[3, 1, 15 + 60 + 20],
	[4, 2, 15 + 40 + 40],
	[7, 2, 15 + 70 + 60],
])("%d kits, %d people: %d minutes, as step by step", (kits, workers, minutes) => {
	expect(minutesOf(roundLength(steps, workers, soaks(3)), kits)).toBe(minutes);
	expect(answerOf(roundMinutes, { steps, kits, workers, loads: soaks(3) })).toBe(minutes);
});

test("no kit, no round", () => {
	expect(minutesOf(roundLength(steps, 1, soaks(3)), 0)).toBe(0);
});

test.each([
	[95, 8, 3],
	[94, 8, 2],
	[1000, 8, 8],
	[10, 8, 1],
])("within %d minutes, of %d kits at most %d", (minutes, kits, most) => {
	expect(mostKitsWithin(roundLength(steps, 1, soaks(3)), minutes, kits)).toBe(most);
});
