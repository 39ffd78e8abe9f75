import { expect, test } from "vitest";
import { AgesOfKits } from "../../../src/core/kits/agesOfKits.ts";
import { LaterEnds, sureNone } from "../../../src/core/kits/laterEnds.ts";

const KITS = 3;
const ENDS = 3;
const chances = (...of: number[]) => {
	const all = sureNone(KITS);
	all.set(of);
	return all;
};
/** None ends today, one tomorrow at even odds, two the day after for sure. */
const later = () => new LaterEnds(KITS, [chances(1), chances(0.5, 0.5), chances(0, 0, 1)]);
/** "end count chance", each. */
const agesOf = (...of: (readonly [number, number, number])[]) => {
	const ages = new AgesOfKits(KITS, ENDS);
	for (const [end, count, chance] of of) ages.add(end, count, chance);
	return ages;
};
const all = (ages: AgesOfKits) => [
	ages.none,
	...[0, 1, 2].flatMap((end) =>
		[1, 2, 3].flatMap((n) => {
			const chance = ages.of(end)[n] as number;
			return chance === 0 ? [] : [[end, n, chance]];
		}),
	),
];

test("to begin with, the last days that hold all kits", () => {
	expect(all(AgesOfKits.first(KITS, ENDS, later()))).toEqual([0, [1, 1, 1]]);
});

test.each([
	["no others", 0, 0, [0.4]],
	["one other, on a day on which it may be", 0, 1, [0, [2, 1, 0.4]]],
	["two others: those of the last day for sure", 0, 2, [0, [2, 2, 0.4]]],
	["three: one tomorrow, before the two", 0, 3, [0, [1, 1, 0.4]]],
	["two, seen from tomorrow", 1, 2, [0, [2, 2, 0.4]]],
	["more than may end later: on the latest", 1, 3, [0, [2, 3, 0.4]]],
])("the next oldest of %s", (_what, end, others, expected) => {
	const ages = agesOf();
	ages.addNext(end, others, later(), 0.4);
	expect(all(ages)).toEqual(expected);
});

test.each([
	["of several that end together one fewer does", 3, [[0, 3, 0.5]], [0, [0, 2, 0.5]]],
	["of one alone the next follow", 3, [[0, 1, 0.5]], [0, [2, 2, 0.5]]],
	["and where none is left, none is", 1, [[0, 1, 0.5]], [0.5]],
	["the last day's follow on the last day", 3, [[2, 1, 0.5]], [0, [2, 2, 0.5]]],
	["what hardly ever is is left out", 3, [[0, 1, 1e-20]], [0]],
	[
		"others than the days to come ever hold end on the latest, beside those that do anyway",
		2,
		[
			[0, 1, 0.5],
			[2, 2, 0.25],
		],
		[0, [2, 1, 0.75]],
	],
	[
		"all at once",
		3,
		[
			[0, 1, 0.25],
			[0, 3, 0.25],
			[1, 1, 0.25],
			[1, 2, 0.25],
		],
		[0, [0, 2, 0.25], [1, 1, 0.25], [2, 2, 0.5]],
	],
] as const)("a use takes one of the oldest: %s", (_what, there, of, expected) => {
	const ages = agesOf(...of);
	expect(all(ages.lessOne(there, later(), agesOf([0, 1, 1])))).toEqual(expected);
});

test("after midnight each end is a day nearer, and what is over counts to today", () => {
	const ages = agesOf([0, 1, 0.125], [1, 1, 0.25], [1, 3, 0.25], [2, 2, 0.375]);
	ages.midnight();
	expect(all(ages)).toEqual([0, [0, 1, 0.375], [0, 3, 0.25], [1, 2, 0.375]]);
	const only = new AgesOfKits(KITS, 1);
	only.add(0, 2, 0.5);
	only.midnight();
	expect(only.of(0)[2]).toBe(0.5);
});

test("chances are added up, weighed, and given back where none is ready", () => {
	const ages = agesOf([0, 1, 0.25], [2, 3, 0.5]);
	ages.none = 0.25;
	expect(ages.total()).toBe(1);
	const sum = agesOf([0, 1, 0.5]);
	sum.none = 0.5;
	expect(sum.addFrom(0, ages, KITS, 0.5)).toBe(1);
	expect(all(sum)).toEqual([0.625, [0, 1, 0.625], [2, 3, 0.25]]);
	sum.times(2);
	sum.allBack(1);
	expect(all(sum)).toEqual([0, [0, 1, 1.25], [1, 3, 1.25], [2, 3, 0.5]]);
	sum.none = 1;
	sum.clear();
	expect(all(sum)).toEqual([0]);
});

test("only those that end on a day or later are added, and only so many kits as there are", () => {
	const ages = agesOf([0, 1, 0.25], [1, 2, 0.25], [2, 1, 0.25], [2, 3, 0.125]);
	ages.none = 0.125;
	const sum = agesOf([1, 1, 0.5]);
	expect(sum.addFrom(1, ages, 2, 0.5)).toBe(0.625);
	expect(all(sum)).toEqual([0.0625, [1, 1, 0.5], [1, 2, 0.125], [2, 1, 0.125]]);
});

test("of several that end together on one of some days one goes, of one alone none", () => {
	const ages = () => agesOf([0, 2, 0.125], [1, 1, 0.25], [1, 2, 0.25], [1, 3, 0.125], [2, 3, 0.25]);
	expect([ages().several(0, 1, 3), ages().several(0, 1, 2), ages().several(0, -1, 3)]).toEqual([
		0.5, 0.375, 0,
	]);
	expect(ages().several(1, 5, 3)).toBe(0.625);
	const fewer = ages();
	fewer.oneFewer(1, 5);
	expect(all(fewer)).toEqual([0, [0, 2, 0.125], [1, 1, 0.5], [1, 2, 0.125], [2, 2, 0.25]]);
	const only = new AgesOfKits(1, 1);
	only.add(0, 1, 0.5);
	only.oneFewer(0, 0);
	expect(only.of(0)[1]).toBe(0.5);
});
