import { describe, expect, test } from "vitest";
import { type Method, methods } from "../../../src/core/methods/method.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import { proposedSteps } from "../../../src/core/rounds/proposedSteps.ts";
import { soakStep } from "../../../src/core/rounds/soakStep.ts";
import { unitWith } from "../smallUnit.ts";

const shortest = { soak: 20, boil: 15, steam: 25 };
const wordsOf = (method: Method) => proposedSteps(method, shortest).map(({ step }) => step);

test.each([
	["chlorine", 20],
	["boiling", 15],
	["steam", 25],
] as const)(
	"by %s, the step that disinfects lasts as long as the unit asks: %i minutes",
	(method, minutes) => {
		const steps = proposedSteps(method, shortest);
		const found = steps.filter(({ source, basis }) => source.mark === "seen" && basis === "load");
		expect(found.map((step) => [step.minutes, step.hands_on, step.basis])).toEqual([
			[minutes, "no", "load"],
		]);
		if (method === "chlorine") expect(soakStep(steps, minutes)).toBe(found[0]?.step);
		for (const step of steps) if (step.basis === "load") expect(step.method).toBe(method);
	},
);

test.each<[Method, string[]]>([
	[
		"chlorine",
		[
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
		],
	],
	[
		"boiling",
		[
			"apart",
			"Wash",
			"soap,",
			"under water",
			"rolling boil, lid on, add",
			"forceps",
			"hands washed",
			"Dry",
			"test",
			"store",
		],
	],
	[
		"steam",
		[
			"apart",
			"Wash",
			"soap,",
			"rack, none",
			"in steam",
			"forceps",
			"hands washed",
			"Dry",
			"test",
			"store",
		],
	],
	["autoclave", ["apart", "Wash", "soap,", "test", "tape and", "Send", "came back"]],
])(
	"by %s, washing comes before disinfection, drying and testing in their places",
	(method, parts) => {
		const order = parts.map((part) => wordsOf(method).findIndex((step) => step.includes(part)));
		expect(order).not.toContain(-1);
		expect([...order].sort((a, b) => a - b)).toEqual(order);
	},
);

describe.each(methods)("by %s", (method) => {
	const steps = proposedSteps(method, shortest);

	test("a plan can be made with the steps as they are, without an error", () => {
		const rows = steps.map(({ step, basis, minutes, hands_on, method: only }) =>
			[step.replaceAll(",", ""), basis, minutes, hands_on, only ?? ""].join(","),
		);
		const made = plan(
			unitWith(
				{ method, soak_minutes: 20, disinfect_boil_minutes: 15, steam_minutes: 25 },
				{ "steps.csv": ["step,basis,minutes,hands_on,method", ...rows].join("\n") },
			),
		);
		expect(made.made).toBe(true);
		const codes = made.problems.filter(({ file }) => file === "steps.csv").map(({ code }) => code);
		expect(codes.filter((code) => !["step-lacking", "heating-left-out"].includes(code))).toEqual(
			[],
		);
	});

	test("every step says where it comes from", () => {
		for (const { source } of steps) expect(source.title).not.toBe("");
	});
});
