import { describe, expect, test } from "vitest";
import type { Counts } from "../../../src/core/counts/counts.ts";
import { laguerreNodes } from "../../../src/core/counts/laguerreNodes.ts";
import { mixedOver } from "../../../src/core/counts/mixedOver.ts";
import { sumOf } from "../../../src/core/counts/sumOf.ts";
import { atLevel } from "../../../src/core/rounds/atLevel.ts";
import { soaks } from "../../../src/core/rounds/loads.ts";
import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";
import type { Steps } from "../../../src/core/stock/commonStep.ts";
import { usedTogether } from "../../../src/core/stock/stepsUsed.ts";
import { expectWithin } from "../../expectWithin.ts";

const steps: Steps = { size: 1, of: (amount) => amount, more: 0, most: Number.POSITIVE_INFINITY };
const none = { perDay: 0, perRound: 0, perLoad: [0], perKit: [0, 0], perDescale: 0 };
const level = { mean: 3, levelShape: 4, daySpread: 0 };
const rounds = (...byKind: number[][]): RoundsOfDay => {
	const kits = (byKind[0] as number[]).map((kits, i) => kits + (byKind[1]?.[i] as number));
	const starts = kits.map((_, i) => 60 * i);
	return {
		kind: "in_rounds",
		starts,
		kits,
		byKind,
		forecast: { level, sure: byKind.map((of, kind) => of.map((mean) => (kind * mean) / 4)) },
	};
};
const busy = rounds([0.9, 0.4], [0.2, 1.1]);
const quiet = rounds([0.3, 0], [0, 0.5]);
const nodes = laguerreNodes(4, 3);

function poissonChances(mean: number): number[] {
	const chances = [Math.exp(-mean)];
	for (let k = 1; k < 30; k++) chances.push(((chances[k - 1] as number) * mean) / k);
	return chances;
}

/** Every number of kits of each kind in a round, in turn. */
function oneRound(
	means: readonly number[],
	useOf: (kits: readonly [number, number]) => number,
): Counts {
	const chance = new Float64Array(1000);
	const [few, many] = means.map(poissonChances) as [number[], number[]];
	few.forEach((p, a) => {
		many.forEach((q, b) => {
			chance[useOf([a, b])] = (chance[useOf([a, b])] as number) + p * q;
		});
	});
	return { first: 0, chance };
}

describe("days gone through together are their rounds, one after the other", () => {
	test.each([
		["rounds alone", { ...none, perRound: 5 }, 2],
		["loads alone", { ...none, perLoad: [4] }, 2],
		["rounds and loads", { ...none, perRound: 5, perLoad: [4] }, 2],
		["rounds and kits, and by the day", { ...none, perDay: 2, perRound: 5, perKit: [3, 3] }, 2],
		["loads and kits", { ...none, perLoad: [11], perKit: [3, 3] }, 2],
		["loads of three", { ...none, perRound: 1, perLoad: [11], perKit: [3, 3] }, 3],
		["loads of one kit, which are the kits", { ...none, perLoad: [4], perKit: [3, 3] }, 1],
	] as const)("%s", (_what, rates, inLoad) => {
		const days = [busy, quiet, busy];
		const use = { rates, days, loads: soaks(inLoad), descaleEvery: 0 };
		const found = usedTogether(use, steps, nodes) as Counts;
		const useOf = ([a, b]: readonly [number, number]) =>
			(a + b > 0 ? rates.perRound : 0) +
			rates.perLoad[0] * Math.ceil((a + b) / inLoad) +
			rates.perKit[0] * a +
			rates.perKit[1] * b;
		const exact = mixedOver(nodes, (factor) =>
			sumOf(
				days
					.map((day) => atLevel(day, factor))
					.flatMap(({ byKind: [few, many] }) =>
						(few as number[]).map((kits, i) => oneRound([kits, many?.[i] as number], useOf)),
					),
			),
		);
		const byDay = rates.perDay * days.length;
		for (let amount = 0; amount < 300; amount++)
			expectWithin(
				found.chance[amount + byDay - found.first] ?? 0,
				exact.chance[amount - exact.first] ?? 0,
				1e-12,
				"chance",
			);
	});
});

test.each([
	["of one size, as one", [7, 4], [2, 2], [11], 2],
	["of another size, by which nothing goes", [0, 11], [5, 2], [11], 2],
])("loads of two methods: %s", (_what, perLoad, sizes, together, size) => {
	const methods = ["chlorine", "boiling"] as const;
	const loads = methods.map((method, i) => ({ method, kits: sizes[i] as number }));
	const use = { days: [busy, quiet], descaleEvery: 0 };
	const rates = { ...none, perRound: 5, perKit: [3, 3] };
	const found = usedTogether({ ...use, rates: { ...rates, perLoad }, loads }, steps, nodes);
	const asOne = { ...use, rates: { ...rates, perLoad: together }, loads: soaks(size) };
	expect(found).toEqual(usedTogether(asOne, steps, nodes));
	expect(found).toBeDefined();
});

test("loads of two methods of other sizes are followed day by day", () => {
	const loads = [...soaks(2), { method: "boiling", kits: 3 } as const];
	const rates = { ...none, perLoad: [7, 4] };
	expect(usedTogether({ rates, days: [busy], loads, descaleEvery: 0 }, steps, nodes)).toBe(
		undefined,
	);
});

test.each([
	["kits that differ, with rounds", { ...none, perRound: 5, perKit: [3, 7] }, 1],
	["very many numbers", { ...none, perRound: 5, perLoad: [4], perKit: [3, 3] }, 40],
])("day by day: %s", (_what, rates, times) => {
	const days = new Array<RoundsOfDay>(times).fill(busy);
	expect(usedTogether({ rates, days, loads: soaks(2), descaleEvery: 0 }, steps, nodes)).toBe(
		undefined,
	);
});
