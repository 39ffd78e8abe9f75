import { describe, expect, test } from "vitest";
import { alike } from "../../../src/core/counts/alike.ts";
import { MOST_RESULTS } from "../../../src/core/counts/remembered.ts";

interface Inputs {
	readonly a: unknown;
	readonly b: unknown;
}

/** Work that counts how often it is done. */
function counted() {
	let done = 0;
	const work = alike<Inputs, { inputs: Inputs }>(["a", "b"], (inputs) => {
		done++;
		return { inputs };
	});
	return { work, done: () => done };
}

describe("work for inputs that are alike", () => {
	const object = {};

	test.each([
		["numbers", { a: 1, b: 2 }, { a: 1, b: 2 }],
		["the same object", { a: object, b: "x" }, { a: object, b: "x" }],
		["lists of the same one member", { a: [object], b: [3] }, { a: [object], b: [3] }],
	])("is done once: %s", (_what, one, other) => {
		const { work, done } = counted();
		expect(work(one)).toBe(work(other));
		expect(done()).toBe(1);
	});

	test.each([
		["another number", { a: 1, b: 2 }, { a: 1, b: 3 }],
		["changed places", { a: 1, b: 2 }, { a: 2, b: 1 }],
		["objects that only look alike", { a: {}, b: 1 }, { a: {}, b: 1 }],
		["lists of two", { a: [1, 2], b: 1 }, { a: [1, 2], b: 1 }],
		["a number and its text", { a: 1, b: 1 }, { a: "1", b: 1 }],
	])("is done again: %s", (_what, one, other) => {
		const { work, done } = counted();
		expect(work(one)).not.toBe(work(other));
		expect(done()).toBe(2);
	});

	test("a result of 0 is a result", () => {
		let done = 0;
		const zero = alike<Inputs, number>(["a", "b"], () => {
			done++;
			return 0;
		});
		expect([zero({ a: 1, b: 1 }), zero({ a: 1, b: 1 })]).toEqual([0, 0]);
		expect(done).toBe(1);
	});

	test("very many results are let go, and worked out again", () => {
		const { work, done } = counted();
		for (let a = 0; a < MOST_RESULTS; a++) work({ a, b: 0 });
		expect(work({ a: 0, b: 0 }).inputs).toEqual({ a: 0, b: 0 });
		expect(done()).toBe(MOST_RESULTS + 1);
	});
});
