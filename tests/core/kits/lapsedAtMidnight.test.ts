import { expect, test } from "vitest";
import { bothAway, doneBy, stillInWork } from "../../../src/core/kits/lapsedAtMidnight.ts";

const hands = { people: 2, workMinutes: 30, aloneMinutes: 60 };

test.each([
	["before any was left alone long enough", hands, 20, 0],
	["nor when that has just passed", hands, 60, 0],
	["a moment too early", hands, 89, 0],
	["one for each person", hands, 90, 2],
	["the next of each", hands, 119, 2],
	["and so on", hands, 150, 6],
	["without work all are done at once", { ...hands, workMinutes: 0 }, 60, Number.POSITIVE_INFINITY],
	["but not before", { ...hands, workMinutes: 0 }, 59, 0],
])("kits out of date that are ready again: %s", (_what, of, minute, done) => {
	expect(doneBy(of, minute)).toBe(done);
});

test.each([
	[0, [0.5, 0.25, 0.125, 0.125]],
	[1, [0.75, 0.125, 0.125, 0]],
	[9, [1, 0, 0, 0]],
	[Number.POSITIVE_INFINITY, [1, 0, 0, 0]],
])("once %d are done, none or as many fewer are in work", (done, left) => {
	const lapsed = Float64Array.of(0.5, 0.25, 0.125, 0.125);
	expect([...stillInWork(lapsed, done)]).toEqual(left);
});

test("once all are done none is in work, whatever went out of date besides", () => {
	const [lapsed, others] = [Float64Array.of(0.5, 0.5), Float64Array.of(0.25, 0.75)];
	expect([...stillInWork(lapsed, Number.POSITIVE_INFINITY, others)]).toEqual([1, 0]);
});

test("away for one reason or the other, apart from each other", () => {
	const [one, other] = [Float64Array.of(0.5, 0.5), Float64Array.of(0.25, 0.25, 0.5)];
	expect([...bothAway(one, other)]).toEqual([0.125, 0.25, 0.375, 0.25]);
	expect([...bothAway(other, one)]).toEqual([0.125, 0.25, 0.375, 0.25]);
});
