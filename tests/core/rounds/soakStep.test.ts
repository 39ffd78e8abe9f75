import { expect, test } from "vitest";
import { isStep, soakStep } from "../../../src/core/rounds/soakStep.ts";
import type { Step } from "../../../src/core/rounds/step.ts";

const step = (
	name: string,
	basis: Step["basis"],
	minutes: number,
	hands_on: Step["hands_on"],
): Step => ({ step: name, basis, minutes, hands_on });

const wash = step("wash", "kit", 30, "yes");
const drain = step("drain", "load", 5, "no");
const soak = step("soak", "load", 20, "no");
const rinse = step("rinse", "load", 25, "yes");
const dry = step("dry", "round", 60, "no");

test.each([
	["the waiting step of a load that is long enough", [wash, drain, soak, rinse, dry], "soak"],
	["not a longer one after it", [drain, soak, { ...soak, step: "wait", minutes: 40 }], "soak"],
	["the longest where none is long enough", [wash, drain, { ...soak, minutes: 10 }, dry], "soak"],
	["the first where several are", [soak, { ...soak, step: "soak again" }], "soak"],
	["none where nothing waits load by load", [wash, rinse, dry], undefined],
	["none without steps", [], undefined],
] as const)("the soak is %s", (_, steps, expected) => {
	expect(soakStep(steps, 20)).toBe(expected);
});

test("a load of several is still the same step; another step with a longer name is not", () => {
	expect(isStep("soak", "soak")).toBe(true);
	expect(isStep("soak (load 2 of 2)", "soak")).toBe(true);
	expect(isStep("soak (load 10 of 12)", "soak")).toBe(true);
	expect(isStep("soak again", "soak")).toBe(false);
	expect(isStep("soak", undefined)).toBe(false);
});
