import { describe, expect, test } from "vitest";
import { calculation, derive, gather, typedFigure } from "../../src/core/calculation.ts";
import { problemsOf } from "../../src/core/outcome.ts";
import { refuse } from "../../src/core/refusal.ts";
import { definition } from "../../src/core/source.ts";
import { figure, missing } from "./answerOf.ts";

const ratio = calculation<{ part: number; whole: number }, number>({
	key: "ratio",
	label: "Ratio",
	unit: "share",
	formula: "Part ÷ whole.",
	source: definition,
	inputs: {
		part: { label: "Part", unit: "kits", min: 0, max: 100 },
		whole: { label: "Whole", unit: "kits" },
	},
	example: { inputs: { part: 1, whole: 4 }, result: 0.25, within: 0 },
	compute: ({ part, whole }) =>
		whole === 1
			? refuse({ code: "one", received: "1", allowed: "not 1", message: "One is refused." })
			: part / whole,
});

const place = { file: "unit.csv", line: 5, column: "value" };

describe("derive", () => {
	test("gives the value, and knows what it came from", () => {
		const inputs = { part: figure(1), whole: figure(4) };
		const result = derive(ratio, inputs);
		expect(result).toMatchObject({
			label: "Ratio",
			unit: "share",
			outcome: { ok: true, value: 0.25 },
		});
		expect(result.origin).toEqual({ kind: "computed", calculation: ratio, inputs });
	});

	test("without an input there is no value, and its problem is passed on", () => {
		const { outcome } = derive(ratio, { part: missing("a"), whole: figure(4) });
		expect(problemsOf(outcome).map((p) => p.code)).toEqual(["a"]);
	});

	test("the problems of all inputs are passed on together", () => {
		const { outcome } = derive(ratio, { part: missing("a"), whole: missing("b") });
		expect(problemsOf(outcome).map((p) => p.code)).toEqual(["a", "b"]);
	});

	test("a problem is passed on through further calculations", () => {
		const first = derive(ratio, { part: missing("a"), whole: figure(4) });
		const second = derive(ratio, {
			part: figure(1),
			whole: derive(ratio, { part: figure(1), whole: first }),
		});
		expect(problemsOf(second.outcome).map((p) => p.code)).toEqual(["a"]);
	});

	test.each([
		[-0.001, false],
		[0, true],
		[100, true],
		[100.001, false],
	])("a part of %d lies inside its limits: %s", (part, inside) => {
		expect(derive(ratio, { part: figure(part), whole: figure(4) }).outcome.ok).toBe(inside);
	});

	test("a value outside its limits is named where it was typed", () => {
		const { outcome } = derive(ratio, {
			part: typedFigure("Part", "kits", 200, place),
			whole: figure(4),
		});
		expect(problemsOf(outcome)).toMatchObject([
			{ code: "outside-limits", received: "200", ...place },
		]);
	});

	test.each([
		[{ min: 2 }, "a number of at least 2"],
		[{ max: 0.5 }, "a number of at most 0.5"],
		[{ min: 2, max: 3 }, "a number from 2 to 3"],
	])("limits of %j in words", (limits, allowed) => {
		const limited = {
			...ratio,
			inputs: { ...ratio.inputs, part: { ...ratio.inputs.part, ...limits } },
		};
		if (!("max" in limits)) delete (limited.inputs.part as { max?: number }).max;
		if (!("min" in limits)) delete (limited.inputs.part as { min?: number }).min;
		const [problem] = problemsOf(derive(limited, { part: figure(1), whole: figure(4) }).outcome);
		expect(problem).toMatchObject({ allowed, message: expect.stringContaining(allowed) });
	});

	test("a refusal becomes a problem at the place given", () => {
		const { outcome } = derive(ratio, { part: figure(1), whole: figure(1) }, place);
		expect(problemsOf(outcome)).toEqual([
			{
				weight: "error",
				code: "one",
				received: "1",
				allowed: "not 1",
				message: "One is refused.",
				...place,
			},
		]);
	});

	test.each([
		["NaN", 0, 0],
		["infinity", 1, 0],
	])("%s is a mistake of the program and throws", (_name, part, whole) => {
		expect(() => derive(ratio, { part: figure(part), whole: figure(whole) })).toThrow(
			/program error: ratio/,
		);
	});
});

describe("gather", () => {
	test("asked why, a list says each of its figures in turn", () => {
		const { origin } = gather("List", "kits", { b: figure(2), a: figure(1) });
		if (origin.kind !== "computed") throw new Error("a list is worked out");
		const { inputs, calculation } = origin;
		expect(Object.keys(inputs)).toEqual(["b", "a"]);
		expect(calculation).toMatchObject({ key: "list", label: "List", unit: "kits" });
		expect(calculation.compute({ a: 1, b: 2 })).toEqual([2, 1]);
	});

	test("lists the values in order", () => {
		expect(gather("List", "kits", { b: figure(2), a: figure(1) }).outcome).toEqual({
			ok: true,
			value: [2, 1],
		});
	});

	test("an empty list is a value", () => {
		expect(gather("List", "kits", {}).outcome).toEqual({ ok: true, value: [] });
	});

	test("one missing value leaves no list", () => {
		const { outcome } = gather("List", "kits", { a: figure(1), b: missing("b") });
		expect(problemsOf(outcome).map((p) => p.code)).toEqual(["b"]);
	});
});
