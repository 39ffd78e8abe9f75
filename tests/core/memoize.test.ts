import { describe, expect, test } from "vitest";
import { MOST_RESULTS, memoize, memoizeByObject } from "../../src/core/memoize.ts";

/** Work that counts how often it is done. */
function counted() {
	let done = 0;
	const work = memoize((a: unknown, b: unknown) => {
		done++;
		return { a, b };
	});
	return { work, done: () => done };
}

describe("work that was done for the same inputs lately", () => {
	const object = {};

	test.each<[string, [unknown, unknown], [unknown, unknown]]>([
		["numbers", [1, 2], [1, 2]],
		["the same object", [object, "x"], [object, "x"]],
		["lists of the same one member", [[object], [3]], [[object], [3]]],
	])("is done once: %s", (_what, one, other) => {
		const { work, done } = counted();
		expect(work(...one)).toBe(work(...other));
		expect(done()).toBe(1);
	});

	test("is done once for each of many inputs, in whatever order they come back", () => {
		const { work, done } = counted();
		const all = [1, 2, 3].flatMap((a) => [1, 2, 3].map((b) => [a, b] as const));
		for (const [a, b] of [...all, ...all, ...all.toReversed()]) work(a, b);
		expect(done()).toBe(9);
	});

	test.each<[string, [unknown, unknown], [unknown, unknown]]>([
		["another number", [1, 2], [1, 3]],
		["changed places", [1, 2], [2, 1]],
		["objects that only look alike", [{}, 1], [{}, 1]],
		["lists of two", [[1, 2], 1], [[1, 2], 1]],
		["a number and its text", [1, 1], ["1", 1]],
	])("is done again: %s", (_what, one, other) => {
		const { work, done } = counted();
		expect(work(...one)).not.toBe(work(...other));
		expect(done()).toBe(2);
	});

	test("a list and its beginning are told apart, in whatever order they come", () => {
		const sum = memoize(
			(parts: readonly number[]) => ({ sum: parts.reduce((all, part) => all + part, 0) }),
			(parts) => parts,
		);
		const results = [sum([1, 2]), sum([1]), sum([1, 2, 3]), sum([1]), sum([])];
		expect(results.map((result) => result.sum)).toEqual([3, 1, 6, 1, 0]);
		expect(results[3]).toBe(results[1]);
	});

	test("a result of 0 is a result", () => {
		let done = 0;
		const zero = memoize((_of: number) => {
			done++;
			return 0;
		});
		expect([zero(1), zero(1)]).toEqual([0, 0]);
		expect(done).toBe(1);
	});

	test("very many results are let go, and worked out again", () => {
		const { work, done } = counted();
		for (let a = 0; a < MOST_RESULTS; a++) work(a, 0);
		expect(work(0, 0)).toEqual({ a: 0, b: 0 });
		expect(done()).toBe(MOST_RESULTS + 1);
	});
});

test("work is done once for each object, also where it gives nothing", () => {
	const asked: object[] = [];
	const work = memoizeByObject((of: { readonly n: number }) => {
		asked.push(of);
		return of.n === 0 ? undefined : { n: of.n };
	});
	const [none, one, likeOne] = [{ n: 0 }, { n: 1 }, { n: 1 }];
	expect([work(none), work(none)]).toEqual([undefined, undefined]);
	expect(work(one)).toBe(work(one));
	expect(work(likeOne)).not.toBe(work(one));
	expect(asked).toEqual([none, one, likeOne]);
});

test("for an object only the last result is kept, and only for the same other inputs", () => {
	let done = 0;
	const work = memoizeByObject((_of: object, other: number) => {
		done++;
		return other;
	});
	const object = {};
	expect([1, 1, 2, 2, 1].map((other) => work(object, other))).toEqual([1, 1, 2, 2, 1]);
	expect(done).toBe(3);
});
