import { expect, test } from "vitest";
import { answer, noAnswer, problemsOf } from "../../src/core/outcome.ts";
import { advice, distinct, nowhere, problem, problemKey } from "../../src/core/problem.ts";

const words = { code: "bad-cell", received: "x", allowed: "y", message: "z" };

test("an answer has a value and no problems", () => {
	expect(answer(0)).toEqual({ ok: true, value: 0 });
	expect(problemsOf(answer(0))).toEqual([]);
});

test("no answer has problems and no value", () => {
	const found = problem(nowhere, words);
	expect(noAnswer(found)).toEqual({ ok: false, problems: [found] });
	expect(problemsOf(noAnswer(found, found))).toHaveLength(2);
});

test("a problem is an error, a remark is advice", () => {
	expect([problem(nowhere, words).weight, advice(nowhere, words).weight]).toEqual([
		"error",
		"advice",
	]);
});

test("each problem is listed once, in the order first met", () => {
	const one = problem({ file: "a.csv", line: 2, column: "b" }, words);
	const other = problem({ file: "a.csv", line: 3, column: "b" }, words);
	expect(distinct([one, other, { ...one }])).toEqual([one, other]);
	expect(problemKey(one)).not.toBe(problemKey(other));
});
