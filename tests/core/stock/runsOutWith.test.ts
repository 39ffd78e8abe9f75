import { expect, test } from "vitest";
import { type ProjectedLot, shortFrom } from "../../../src/core/stock/projection.ts";
import { dayWith, type RunsOut, runsOutWith } from "../../../src/core/stock/runsOutWith.ts";
import { randomNumbers } from "../../reference/randomNumbers.ts";

const lot = (quantity: number, from: number, change: Partial<ProjectedLot> = {}): ProjectedLot => ({
	name: `${from}`,
	quantity,
	from,
	last: Number.POSITIVE_INFINITY,
	ends: "out of date",
	perUnit: () => 1,
	...change,
});
const two = new Array<number>(12).fill(2);
const outs = (lots: ProjectedLot[], delivered: ProjectedLot, packs: number, packSize = 4) =>
	runsOutWith.compute({ lots, delivered: [delivered], demand: two, packs, packSize }) as RunsOut;

test.each<[string, ProjectedLot[], ProjectedLot, number, (number | null)[]]>([
	["nothing here, nothing ordered", [], lot(0, 3), 0, [3]],
	["nothing here, two packs", [], lot(0, 3), 2, [3, 5, 7]],
	["some here when it comes", [lot(8, 0)], lot(0, 3), 2, [4, 6, 8]],
	["short before it comes: no pack helps that", [lot(2, 0)], lot(0, 3), 1, [3, 5]],
	["a lot on its way comes later", [lot(8, 5)], lot(0, 3), 2, [3, 9, 11]],
	["it lasts for all the days looked at", [lot(8, 0)], lot(0, 3), 4, [4, 6, 8, 10, null]],
	["it goes out of date", [lot(8, 0)], lot(0, 3, { last: 5 }), 3, [4, 6, 7, 7]],
	["it comes out of date", [lot(8, 0)], lot(0, 3, { last: 2 }), 2, [4, 4, 4]],
	["it takes more as it fades", [], lot(0, 0, { perUnit: (day) => 1 + day }), 2, [0, 1, 2]],
])("%s", (_what, lots, delivered, packs, days) => {
	expect(outs(lots, delivered, packs)).toEqual({ each: 1, days });
});

test("of many packs several are taken at a time, and of some in between no more is said than holds", () => {
	const { each, days } = outs([], lot(0, 0), 5000, 0.004);
	expect([each, days.length]).toEqual([3, 1668]);
	// 5,000 packs are 20, enough for ten days; 3 fewer are not.
	expect(days.at(-1)).toBe(10);
	expect(dayWith({ each, days }, 4999, 5000)).toBe(9);
	expect(dayWith({ each, days }, 5000, 5000)).toBe(10);
	expect(dayWith({ each: 3, days: [1, 2, 7] }, 5, 6)).toBe(2);
	expect(dayWith({ each: 1, days: [1, 2, 7] }, 2, 3)).toBe(7);
});

test("every number of packs has the day that it has by itself", () => {
	const random = randomNumbers(7);
	for (let unit = 0; unit < 60; unit++) {
		const any = (i: number) =>
			lot(Math.ceil(30 * random()), Math.floor(8 * random()) - 4, {
				name: `${i}`,
				last: Math.floor(20 * random()),
				perUnit: (day) => 1 + day * i,
			});
		const [brought, ...lots] = [0.3, 0, 0.1, 0.2].map(any) as [ProjectedLot, ...ProjectedLot[]];
		const demand = Array.from({ length: 15 }, () => 4 * random());
		const packs = Math.floor(40 * random());
		const found = runsOutWith.compute({ lots, delivered: [brought], demand, packs, packSize: 0.5 });
		const alone = Array.from({ length: packs + 1 }, (_, count) =>
			shortFrom(brought.from, [...lots, { ...brought, quantity: 0.5 * count }], demand),
		);
		expect((found as RunsOut).days).toEqual(alone);
	}
});
