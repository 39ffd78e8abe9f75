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

/** Of each step how it is counted, its minutes, H with hands on it, M for the method alone. */
test.each<[Method, string]>([
	[
		"chlorine",
		"kit 3 H, round 5 H, round 10 HM, kit 5 H, kit 15 H, kit 10 H, load 20 M, load 10 HM, round 10 HM, round 5 H, kit 10 H, round 20, kit 10 H, kit 5 H",
	],
	[
		"boiling",
		"kit 3 H, round 5 H, kit 5 H, kit 15 H, kit 10 H, load 30 M, load 15 M, load 10 HM, round 10 H, round 5 H, kit 10 H, round 20, kit 10 H, kit 5 H",
	],
	[
		"steam",
		"kit 3 H, round 5 H, kit 5 H, kit 15 H, kit 10 H, load 15 M, load 25 M, load 10 HM, round 10 H, round 5 H, kit 10 H, round 20, kit 10 H, kit 5 H",
	],
	[
		"autoclave",
		"kit 3 H, round 5 H, kit 5 H, kit 15 H, kit 10 H, kit 10 H, kit 5 HM, round 5 HM, round 10 H, round 10 HM",
	],
	["single_use", "round 5 H, kit 5 HM, kit 10 H, kit 5 H, round 10 H"],
])("by %s each step has its minutes, its hands and its method", (by, wanted) => {
	const told = proposedSteps(by, shortest).map(({ basis, minutes, hands_on, method }) => {
		expect([null, by]).toContain(method);
		const marks = `${hands_on === "yes" ? "H" : ""}${method === null ? "" : "M"}`;
		return `${basis} ${minutes} ${marks}`.trim();
	});
	expect(told.join(", ")).toBe(wanted);
});

/** Steps whose source was seen: the soak, the boil, the steam and the drying. */
test.each<[Method, number]>([
	["chlorine", 3],
	["boiling", 3],
	["steam", 3],
	["autoclave", 0],
	["single_use", 0],
])("by %s what disinfects and the drying have a source that was seen", (by, count) => {
	const seen = proposedSteps(by, shortest).filter(({ source }) => source.mark === "seen");
	expect(seen).toHaveLength(count);
});

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
