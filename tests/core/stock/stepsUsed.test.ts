import { expect, test } from "vitest";
import { chanceAtMost, mean } from "../../../src/core/counts/counts.ts";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { spread } from "../../../src/core/counts/spread.ts";
import { type Loads, soaks } from "../../../src/core/rounds/loads.ts";
import type { Rates } from "../../../src/core/stock/ratesOfItem.ts";
import { stepsUsed } from "../../../src/core/stock/stepsUsed.ts";
import { withDescaling } from "../../../src/core/stock/withDescaling.ts";
import { expectWithin } from "../../expectWithin.ts";

/** Two kinds whose kits use 3 and 5 steps. */
const kits = [0.4, 0.25];
const perKit = [3, 5];
const rounds = 6;
const every = 2;
const used = (perDescale: number) =>
	stepsUsed(
		{
			rates: { perDay: 0, perRound: 0, perLoad: [0, 0], perKit, perDescale },
			days: [
				{
					kind: "in_rounds",
					starts: Array.from({ length: rounds }, (_, i) => 60 * i),
					kits: new Array(rounds).fill(0.65),
					byKind: kits.map((each) => new Array(rounds).fill(each)),
				},
			],
			loads: [...soaks(2), { method: "boiling", kits: 3 }],
			descaleEvery: every,
		},
		{ size: 1, of: (amount) => amount, more: 0, most: Number.POSITIVE_INFINITY },
	);

/** Round after round, with what a round uses kept apart by the rounds since the last descaling. */
function followed(perDescale: number) {
	const [few, many] = kits.map((each, i) => spread(poisson(each), (n) => n * (perKit[i] ?? 0)));
	const chance = new Float64Array(200);
	few?.chance.forEach((p, i) => {
		many?.chance.forEach((q, j) => {
			chance[i + j] = (chance[i + j] as number) + p * q;
		});
	});
	const round = { first: 0, chance };
	const idle = Math.exp(-0.65);
	return withDescaling(
		perDescale,
		every,
		new Array(rounds).fill(round),
		new Array(rounds).fill(idle),
		Number.POSITIVE_INFINITY,
	);
}

test("descalings that use hardly anything are counted as many as there can be, never as fewer", () => {
	const least = 2e-5;
	const [found, exact] = [used(least), followed(least)];
	expect(mean(found)).toBeGreaterThanOrEqual(mean(exact));
	expectWithin(mean(found), mean(exact), (least * rounds) / every, "steps");
	for (let amount = 0; amount < 40; amount++)
		expect(chanceAtMost(found, amount)).toBeLessThanOrEqual(chanceAtMost(exact, amount) + 1e-12);
});

test("kinds that go the same way and use differently are followed each by itself", () => {
	const used = stepsUsed(
		{
			rates: { perDay: 0, perRound: 200, perLoad: [0], perKit, perDescale: 0 },
			days: [{ kind: "in_rounds", starts: [0], kits: [0.65], byKind: kits.map((each) => [each]) }],
			loads: [...soaks(9)],
			descaleEvery: 0,
		},
		{ size: 1, of: (amount) => amount, more: 0, most: Number.POSITIVE_INFINITY },
	);
	const runs = 1 - Math.exp(-0.65);
	expectWithin(mean(used), 200 * runs + 3 * 0.4 + 5 * 0.25, 1e-9, "steps");
	expectWithin(chanceAtMost(used, 204) - chanceAtMost(used, 202), 0.4 * Math.exp(-0.65), 1e-12, "");
});

test("two methods and one kind are never taken for one method and two kinds, whatever the numbers", () => {
	const inOneRound = (rates: Omit<Rates, "perDay" | "perDescale">, loads: Loads, means: number[]) =>
		stepsUsed(
			{
				rates: { perDay: 0, perDescale: 0, ...rates },
				days: [
					{
						kind: "in_rounds",
						starts: [0],
						kits: [means.reduce((sum, each) => sum + each)],
						byKind: means.map((each) => [each]),
					},
				],
				loads,
				descaleEvery: 0,
			},
			{ size: 1, of: (amount) => amount, more: 0, most: Number.POSITIVE_INFINITY },
		);
	// The same numbers one after the other: 0.5, 2, 3, 1, 5, 4, 2.
	const twoMethods: Loads = [...soaks(4), { method: "boiling", kits: 2 }];
	inOneRound({ perKit: [2], perRound: 3, perLoad: [1, 5] }, twoMethods, [0.5]);
	const used = inOneRound({ perKit: [3, 1], perRound: 5, perLoad: [4] }, soaks(2), [0.5, 2]);
	const kits = 2.5;
	// Of a Poisson number: half of it rounded up is half of it, and half a kit more where it is odd.
	const loads = (kits + (1 - Math.exp(-2 * kits)) / 2) / 2;
	const runs = 1 - Math.exp(-kits);
	expectWithin(mean(used), 5 * runs + 4 * loads + 3 * 0.5 + 1 * 2, 1e-9, "steps");
	// Of two methods one may use nothing.
	const ofOne = (perLoad: number[], methods: Loads) =>
		mean(inOneRound({ perKit: [3, 1], perRound: 0, perLoad }, methods, [0.5, 2]));
	for (const methods of [twoMethods, twoMethods.toReversed()])
		expectWithin(
			ofOne(methods === twoMethods ? [0, 4] : [4, 0], methods),
			4 * loads + 3 * 0.5 + 1 * 2,
			1e-9,
			"steps",
		);
});

test("what goes by rounds alone goes with each that runs", () => {
	const used = stepsUsed(
		{
			rates: { perDay: 0, perRound: 3, perLoad: [0], perKit: [0], perDescale: 0 },
			days: [{ kind: "in_rounds", starts: [0, 60], kits: [0.65, 2], byKind: [[0.65, 2]] }],
			loads: [...soaks(9)],
			descaleEvery: 2,
		},
		{ size: 1, of: (amount) => amount, more: 0, most: Number.POSITIVE_INFINITY },
	);
	expectWithin(mean(used), 3 * (2 - Math.exp(-0.65) - Math.exp(-2)), 1e-9, "steps");
});

/** Of six rounds that run as likely as not, one descaling for each two begun. */
test.each([
	["descalings alone", 0, [1 / 64, 21 / 64, 35 / 64, 7 / 64]],
	["with each round that runs", 5, undefined],
])(
	"what goes by descalings goes with every second round that runs: %s",
	(_what, perRound, chances) => {
		const used = stepsUsed(
			{
				rates: { perDay: 0, perRound, perLoad: [0], perKit: [0], perDescale: 3 },
				days: Array.from({ length: 3 }, () => ({
					kind: "in_rounds",
					starts: [0, 60],
					kits: [Math.LN2, Math.LN2],
					byKind: [[Math.LN2, Math.LN2]],
				})),
				loads: [...soaks(9)],
				descaleEvery: 2,
			},
			{ size: 1, of: (amount) => amount, more: 0, most: Number.POSITIVE_INFINITY },
		);
		const descalings = (21 + 2 * 35 + 3 * 7) / 64;
		expectWithin(mean(used), 3 * descalings + 3 * perRound, 1e-12, "steps");
		chances?.forEach((chance, times) => {
			expectWithin(used.chance[3 * times - used.first] ?? 0, chance, 1e-12, "chance");
		});
	},
);

test("what goes by the day alone is known, whether or not anything is descaled", () => {
	for (const descaleEvery of [0, 2]) {
		const used = stepsUsed(
			{
				rates: { perDay: 4, perRound: 0, perLoad: [0], perKit: [0], perDescale: 0 },
				days: [{ kind: "in_rounds", starts: [0], kits: [0.65], byKind: [[0.65]] }],
				loads: [...soaks(9)],
				descaleEvery,
			},
			{ size: 1, of: (amount) => amount, more: 0, most: Number.POSITIVE_INFINITY },
		);
		expectWithin(chanceAtMost(used, 4), 1, 1e-12, "chance");
		expectWithin(mean(used), 4, 1e-12, "steps");
	}
});

test("those that use more are followed", () => {
	const [found, exact] = [used(2), followed(2)];
	for (let amount = 0; amount < 40; amount++)
		expectWithin(chanceAtMost(found, amount), chanceAtMost(exact, amount), 1e-9, "");
});
