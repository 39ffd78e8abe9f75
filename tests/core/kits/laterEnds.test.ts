import { expect, test } from "vitest";
import { added, LaterEnds, sureNone } from "../../../src/core/kits/laterEnds.ts";

const KITS = 3;
const chances = (...of: number[]) => {
	const all = sureNone(KITS);
	all.set(of);
	return all;
};
/** None ends today, one tomorrow at even odds, two the day after for sure. */
const ends = () => new LaterEnds(KITS, [chances(1), chances(0.5, 0.5), chances(0, 0, 1)]);
const endings = (later: LaterEnds) =>
	[0, 1, 2, 3].map((end) => [...later.endings(end)].map((chance) => Number(chance.toFixed(12))));

test("how many end on a day or later is the sum of its days, worked by hand", () => {
	expect(endings(ends())).toEqual([
		[0, 0, 0.5, 0.5],
		[0, 0, 0.5, 0.5],
		[0, 0, 1, 0],
		[1, 0, 0, 0],
	]);
	expect([ends().size(1, 1), ends().size(2, 1), [...ends().sizes(2)]]).toEqual([
		0.5,
		0,
		[0, 0, 1, 0],
	]);
});

test("after midnight each end is a day nearer, and more that end on a day count on all before it", () => {
	const later = ends();
	later.midnight();
	expect(endings(later)).toEqual([
		[0, 0, 0.5, 0.5],
		[0, 0, 1, 0],
		[1, 0, 0, 0],
		[1, 0, 0, 0],
	]);
	later.more(0, chances(0, 1));
	expect([...later.sizes(0)]).toEqual([0, 0.5, 0.5, 0]);
	later.more(2, chances(0.75, 0.25));
	expect(endings(later).slice(1)).toEqual([
		[0, 0, 0.75, 0.25],
		[0.75, 0.25, 0, 0],
		[1, 0, 0, 0],
	]);
	expect(endings(later)[0]).toEqual([0, 0, 0, 0.375]);
});

test("the latest end is the last on which any may end", () => {
	const later = new LaterEnds(KITS, [chances(0, 1), chances(0.5, 0.5), chances(1)]);
	expect([later.latest(0), later.latest(1), later.latest(2)]).toEqual([1, 1, 2]);
	later.more(2, chances(0, 1));
	expect(later.latest(0)).toBe(2);
});

test("two counts are added as far as there are kits, and what is next to nothing is none", () => {
	expect([...added(chances(0.5, 0.25, 0.25), chances(0.5, 0, 0.5))]).toEqual([
		0.25, 0.125, 0.375, 0.125,
	]);
	const into = chances(1, 1, 1, 1);
	expect(added(chances(0.5, 1e-101, 1e-99), chances(1), into)).toBe(into);
	expect([...into]).toEqual([0.5, 0, 1e-99, 0]);
});

test("whether several end together that are the oldest of some, worked by hand", () => {
	// Of two or three kits the two of the last day may be the oldest; of three one ends before them.
	const later = ends();
	expect([0, 1, 2, 3].map((kits) => later.several(0, 2, kits))).toEqual([0, 0, 1, 0]);
	expect(later.several(0, 1, 2)).toBe(0);
	expect(later.several(0, 5, 2)).toBe(1);
	// More than may end later all end on the latest day.
	expect([later.several(1, 2, 3), later.several(1, 1, 3), later.several(1, 2, 1)]).toEqual([
		1, 0, 0,
	]);
});
