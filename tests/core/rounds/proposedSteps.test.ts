import { expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { proposedSteps } from "../../../src/core/rounds/proposedSteps.ts";
import { soakStep } from "../../../src/core/rounds/soakStep.ts";
import { unitWith } from "../smallUnit.ts";

test.each([20, 30])("the soak is found in the steps proposed, and lasts %i minutes", (minutes) => {
	const steps = proposedSteps(minutes);
	const soak = soakStep(steps, minutes);
	expect(steps.find(({ step }) => step === soak)?.minutes).toBe(minutes);
});

test("washing comes before the soak, rinsing and drying after it", () => {
	const words = proposedSteps(20).map(({ step }) => step);
	const at = (part: string) => words.findIndex((step) => step.includes(part));
	const order = [
		"Wipe",
		"Mix",
		"apart",
		"Wash",
		"soap,",
		"Soak",
		"buckets",
		"hands washed",
		"Dry",
		"test",
		"store",
	].map(at);
	expect(order).not.toContain(-1);
	expect([...order].sort((a, b) => a - b)).toEqual(order);
});

test("a plan can be made with them as they are, without a word against them", () => {
	const rows = proposedSteps(20).map(({ step, basis, minutes, hands_on, method }) =>
		[step.replaceAll(",", ""), basis, minutes, hands_on, method ?? ""].join(","),
	);
	const made = plan(
		unitWith({}, { "steps.csv": ["step,basis,minutes,hands_on,method", ...rows].join("\n") }),
	);
	expect(made.made).toBe(true);
	expect(made.problems.filter(({ file }) => file === "steps.csv")).toEqual([]);
});

test("every step says where it comes from", () => {
	for (const { source } of proposedSteps(20)) expect(source.title).not.toBe("");
	expect(
		proposedSteps(20).find(({ basis, hands_on }) => basis === "load" && hands_on === "no")?.source
			.mark,
	).toBe("seen");
});
