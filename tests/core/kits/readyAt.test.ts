import { describe, expect, test } from "vitest";
import { expiriesPerDay } from "../../../src/core/kits/expiriesPerDay.ts";
import { readyAt } from "../../../src/core/kits/readyAt.ts";
import type { InRounds } from "../../../src/core/kits/roundsGoneThrough.ts";
import { unmetPer1000 } from "../../../src/core/kits/unmetPer1000.ts";
import { DayClock, flatDay, type HourShares } from "../../../src/core/rounds/dayClock.ts";
import { expectWithin } from "../../expectWithin.ts";
import { equalRounds, oneByOne } from "./reprocessed.ts";

const DAY = 1440;
const nightly: HourShares = Array.from({ length: 24 }, (_, hour) => (hour < 7 ? 2 : 1) / 31);

/** Nodes and weights of Gauss's rule with five points on −1 to 1. */
const GAUSS = [
	[0, 128 / 225],
	[Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3, (322 + 13 * Math.sqrt(70)) / 900],
	[Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3, (322 - 13 * Math.sqrt(70)) / 900],
].flatMap(([x = 0, w = 0]) =>
	x === 0
		? [[x, w]]
		: [
				[x, w],
				[-x, w],
			],
);

/** Mean of the needs at each moment that find none, weighed by the uses, between two minutes. */
function meanOverTime(kits: number, reprocessing: InRounds, from: number, to: number): number {
	const { starts, plannedMinutes, usesPerDay, hourShares } = reprocessing;
	const uses = new DayClock(usesPerDay, hourShares);
	const days = Array.from({ length: usesPerDay.length + 2 }, (_, day) => day - 1);
	const ends = days.flatMap((day) => starts.map((start) => day * DAY + start + plannedMinutes));
	const hours = Array.from(
		{ length: Math.ceil((to - from) / 60) + 2 },
		(_, i) => i * 60 + from - (from % 60),
	);
	const cuts = [...new Set([from, to, ...ends, ...hours])]
		.filter((cut) => cut >= from && cut <= to)
		.sort((a, b) => a - b);
	let sum = 0;
	for (let i = 0; i + 1 < cuts.length; i++) {
		const [a, b] = [cuts[i] as number, cuts[i + 1] as number];
		const mean = GAUSS.reduce((all, [x = 0, w = 0]) => {
			const at = (a + b) / 2 + (x * (b - a)) / 2;
			return all + (w / 2) * readyAt(kits, reprocessing, at).nonePer1000;
		}, 0);
		sum += mean * uses.between(a, b);
	}
	return sum / uses.between(from, to);
}

const cases = [
	{ perDay: 0.6, starts: [420, 840, 1260], turnaround: 110, shares: flatDay },
	{ perDay: 3, starts: [480, 1200], turnaround: 200, shares: nightly },
	{ perDay: 3, starts: [480, 1200], turnaround: 720, shares: nightly },
	{ perDay: 2, starts: [600], turnaround: 1000, shares: nightly },
	{ perDay: 1, starts: [1260], turnaround: 600, shares: flatDay },
	{ perDay: 4, starts: [0, 1439], turnaround: 1, shares: nightly },
];

describe("over a day the mean need that finds none is the unmet share of kit cover", () => {
	const rows = cases.flatMap((of) => [1, 2, 4].map((kits) => ({ kits, ...of })));
	test.each(rows)(
		"$kits kits, $perDay uses a day, rounds at $starts, $turnaround minutes",
		({ kits, perDay, starts, turnaround, shares }) => {
			const reprocessing = equalRounds(Array(3).fill(perDay), starts, turnaround, shares);
			const expected = unmetPer1000(kits, reprocessing);
			for (const day of [0, 1, 2])
				expectWithin(
					meanOverTime(kits, reprocessing, day * DAY, (day + 1) * DAY),
					expected,
					1e-9 * expected,
					`per 1,000 on day ${day}`,
				);
		},
	);

	test.each([
		[2, 1, 0.6],
		[4, 2, 0.6],
		[4, 3, 2],
	])(
		"%d kits that keep for %d days and are renewed once out of date, %d uses a day",
		(kits, days, perDay) => {
			const reprocessing: InRounds = {
				...equalRounds(Array(3).fill(perDay), [420, 840, 1260], 110, nightly),
				life: { days, renewal: "when_expired" },
			};
			const expected = unmetPer1000(kits, reprocessing);
			const { life: _, ...withoutEnd } = reprocessing;
			expect(expected).toBeGreaterThan(1.1 * unmetPer1000(kits, { ...withoutEnd, life: null }));
			expectWithin(
				meanOverTime(kits, reprocessing, DAY, 2 * DAY),
				expected,
				1e-9 * expected,
				"per 1,000",
			);
		},
	);

	test("and with days that differ, over all of them but for the ends", () => {
		// The first day's night is like its own, the last day's goes on past midnight.
		const usesPerDay = [0.6, 0.6, 3, 0, 1, 1];
		const reprocessing = equalRounds(usesPerDay, [420, 840, 1260], 110, nightly);
		const uses = new DayClock(usesPerDay, nightly);
		const [from, to] = [420, 5 * DAY + 420];
		const mean = meanOverTime(2, reprocessing, from, to);
		const shorter = { ...reprocessing, usesPerDay: usesPerDay.slice(0, -1) };
		const unmet = unmetPer1000(2, shorter);
		const all = new DayClock(shorter.usesPerDay, nightly);
		expectWithin(
			mean * uses.between(from, to),
			unmet * all.between(from, to),
			1e-9 * unmet,
			"per 1,000",
		);
	});
});

const chance = (k: number, mean: number) => {
	let p = Math.exp(-mean);
	for (let i = 1; i <= k; i++) p *= mean / i;
	return p;
};
const by = (kits: number, mean: number) => {
	const fewer = Array.from({ length: kits }, (_, k) => chance(k, mean));
	return {
		ready: fewer.reduce((sum, p, k) => sum + p * (kits - k), 0),
		none: 1000 * (1 - fewer.reduce((sum, p) => sum + p, 0)),
	};
};

describe("kits out of reach", () => {
	const three = equalRounds([0.6, 0.6], [420, 840, 1260], 110, flatDay);
	test.each([
		["at midnight, those since nine", 0, 180],
		["while the morning's round is under way, still those since nine", 529, 709],
		["as soon as it ends, those since it began", 530, 110],
		["in the evening, those since two", 1300, 460],
		["after the night's round", 1370, 110],
		["the day after", DAY + 60, 240],
	])("%s", (_what, minute, since) => {
		for (const kits of [1, 3]) {
			const expected = by(kits, (0.6 * since) / DAY);
			const { ready, nonePer1000 } = readyAt(kits, three, minute);
			expectWithin(ready, expected.ready, 1e-12, "kits");
			expectWithin(nonePer1000, expected.none, 1e-9, "per 1,000");
		}
	});

	/** Kits renewed in time go into the round as it begins; those out of date are gone as the day begins. */
	test.each([
		["the round that takes them begins", 420, "in_time"],
		["their last day is over", DAY, "when_expired"],
	] as const)("kits that nobody used, from the minute on at which %s", (_what, minute, renewal) => {
		const plan: InRounds = {
			...equalRounds([0.6, 0.6], [420], 110, flatDay),
			life: { days: 1, renewal },
		};
		const [before, at, after] = [-1e-6, 0, 1e-6].map(
			(later) => readyAt(3, plan, minute + later).ready,
		) as [number, number, number];
		expectWithin(at, after, 1e-6, "kits");
		expect(before).toBeGreaterThan(at + 0.1);
	});

	test("of a single round that goes on past midnight, those since the night before last", () => {
		const night = equalRounds([1, 1], [1260], 300, flatDay);
		const before = readyAt(2, night, 119);
		expectWithin(before.ready, by(2, (DAY + 180 + 119) / DAY).ready, 1e-12, "kits");
		expectWithin(readyAt(2, night, 120).ready, by(2, 300 / DAY).ready, 1e-12, "kits");
		// The same hour of the day after looks back just as far.
		expectWithin(readyAt(2, night, DAY + 119).ready, before.ready, 1e-12, "kits");
	});

	test("after each use: those of one turnaround, by the clock", () => {
		const each = oneByOne([0.6, 6]);
		for (const [minute, uses] of [
			[0, 0.6 * 110],
			[1439, 0.6 * 110],
			[1440 + 10, 0.6 * 100 + 6 * 10],
			[1440 + 110, 6 * 110],
			[2879, 6 * 110],
		] as const) {
			const expected = by(2, uses / DAY);
			expectWithin(readyAt(2, each, minute).ready, expected.ready, 1e-12, "kits");
			expectWithin(readyAt(2, each, minute).nonePer1000, expected.none, 1e-9, "per 1,000");
		}
	});

	test("after each use, with one person, each day is taken as one of many like it", () => {
		const one = { people: 1, workMinutes: 110, aloneMinutes: 20 };
		const of = (...usesPerDay: number[]) => ({ ...oneByOne(usesPerDay), hands: one });
		for (const minute of [0, 600, 1430]) {
			expect(readyAt(2, of(0.6, 6), minute)).toEqual(readyAt(2, of(0.6), minute));
			expect(readyAt(2, of(0.6, 6), DAY + minute)).toEqual(readyAt(2, of(6), minute));
		}
		expect(readyAt(2, of(0.6), 600).ready).toBeGreaterThan(readyAt(2, of(6), 600).ready + 0.3);
	});

	test.each([
		["no time", 0, 1e-12],
		["moments, which count as a minute", 1e-4, 0.03],
	])(
		"after each use, with work of %s on each kit, no kit waits for hands",
		(_, workMinutes, part) => {
			const plan = { ...oneByOne([3]), readyLifeDays: 5 };
			const few = { ...plan, hands: { people: 1, workMinutes, aloneMinutes: 110 } };
			const many = { ...few, hands: { ...few.hands, people: Number.POSITIVE_INFINITY } };
			const expected = unmetPer1000(3, many);
			expectWithin(unmetPer1000(3, few), expected, part * expected, "per 1,000");
			for (const minute of [0, 600]) {
				const { ready } = readyAt(3, many, minute);
				expectWithin(readyAt(3, few, minute).ready, ready, part * ready, "kits");
			}
		},
	);

	test("without kits none is ready; without uses all are", () => {
		expect(readyAt(0, three, 600)).toEqual({ ready: 0, nonePer1000: 1000 });
		expect(readyAt(3, equalRounds([0], [420], 110, flatDay), 600)).toEqual({
			ready: 3,
			nonePer1000: 0,
		});
	});
});

describe("kits sent away", () => {
	const away = { kind: "sent_away", starts: [480], turnaroundMinutes: 2 * DAY } as const;
	const plan = { ...away, usesPerDay: [1, 1, 1], hourShares: flatDay };

	test.each([
		["of no end", null, 0],
		[
			"of two weeks",
			14,
			expiriesPerDay.compute({ kitsInService: 20, usesPerDay: 1, readyLifeDays: 14 }),
		],
	])(
		"out of reach are those used since the last round that came back, and those out of date: a life %s",
		(_, readyLifeDays, expiring) => {
			// Of the round of two days ago the kits are back since 08:00; it is 10:00.
			const used = 2 + 2 / 24;
			const { ready } = readyAt(20, { ...plan, readyLifeDays }, DAY + 600);
			expectWithin(ready, 20 - used - 2 * Number(expiring), 1e-9, "kits");
		},
	);
});
