import { describe, expect, test } from "vitest";
import { unmetPer1000 } from "../../src/core/kits/unmetPer1000.ts";
import { oneByOne } from "../core/kits/reprocessed.ts";
import { expectWithin } from "../expectWithin.ts";
import { erlangB } from "./erlangB.ts";
import * as from from "./publications.ts";
import { checkCases, type Printed, printed, type ReferenceCase } from "./referenceCase.ts";

type Loss = { load: number; kits: number };

const DAY = 1440;
/** Kits taken up one by one, with a mean of `load` in work were there kits without end. */
const inWork = (load: number, minutes = DAY, people = Number.POSITIVE_INFINITY) => {
	const plan = oneByOne([(load * DAY) / minutes], minutes);
	return { ...plan, hands: { ...plan.hands, people } };
};

/**
 * Erlang's loss formula out of the program's own cover. Where hands never wait the kits out
 * of reach are N, Poisson with the load as its mean however long the work takes (Palm), and
 * the cover is u(c) = P(N ≥ c). Where an unmet need takes no kit, N is that Poisson count
 * given that it is at most c (Erlang; insensitive to the times, Sevastyanov 1957), so
 * B(c) = P(N = c) ÷ P(N ≤ c) = (u(c) − u(c + 1)) ÷ (1 − u(c + 1)).
 */
function lossOfCover(plan: ReturnType<typeof inWork>, kits: number): number {
	const unmet = (c: number) => unmetPer1000(c, plan) / 1000;
	return (unmet(kits) - unmet(kits + 1)) / (1 - unmet(kits + 1));
}

/** The load at which `kits` kits have the given share of needs unmet, by the program. */
function loadWithLoss(loss: number, kits: number): number {
	let low = 0;
	let high = 2 * kits + 2;
	while (high - low > 1e-9) {
		const middle = (low + high) / 2;
		if (lossOfCover(inWork(middle), kits) < loss) low = middle;
		else high = middle;
	}
	return low;
}

function point(
	load: number,
	kits: number,
	expected: number,
	tolerance: number,
	source: Printed,
): ReferenceCase<Loss> {
	const id = `load ${load}, ${kits} kits`;
	return {
		id,
		inputs: { load, kits },
		expected,
		tolerance,
		unit: "chance",
		why: "as many digits as the source has",
		source,
	};
}
const tested = printed(from.erlangTests, "point values");
const fraction = printed(from.recomputed, "exact fraction", "computed");
const points = [
	point(2, 5, 0.0367, 5e-5, tested),
	point(10, 14, 0.0568, 5e-5, tested),
	point(5, 10, 0.0184, 5e-5, tested),
	point(5, 1, 0.8333333333, 1e-10, tested),
	point(20, 10, 0.5379631686320729, 1e-12, tested),
	point(200, 190, 0.08869684386923561, 1e-12, tested),
	point(25, 30, 0.05, 5e-3, printed("Wolfram, loss probabilities for a queue", "example")),
	{
		...point(25, 30, 0.052603172, 1e-9, printed(from.recomputed, "E5", "computed")),
		id: "load 25, 30 kits, further digits",
	},
	point(1, 1, 1 / 2, 1e-15, fraction),
	point(1, 2, 1 / 5, 1e-15, fraction),
	point(1, 3, 1 / 16, 1e-15, fraction),
	point(1, 4, 1 / 65, 1e-15, fraction),
	point(1, 5, 1 / 326, 1e-15, fraction),
	point(2, 3, 4 / 19, 1e-15, fraction),
	point(2, 4, 2 / 21, 1e-15, fraction),
	point(0.5, 2, 1 / 13, 1e-15, fraction),
	point(0.5, 3, 1 / 79, 1e-15, fraction),
	point(0, 3, 0, 0, fraction),
	point(5, 0, 1, 0, fraction),
	point(1000, 1000, 0.02481191764616, 1e-12, printed(from.recomputed, "mpmath", "computed")),
];
checkCases("Erlang's formula out of the program's cover", points, ({ load, kits }) =>
	lossOfCover(inWork(load), kits),
);
checkCases("Erlang's formula as other tests have it", points, ({ load, kits }) =>
	erlangB(load, kits),
);

describe("however long the work takes, and with as many people as anybody needs", () => {
	const some = points.filter(({ inputs: { load } }) => load > 0 && load <= 10);
	test.each(some)("$id", ({ inputs: { load, kits } }) => {
		const expected = erlangB(load, kits);
		for (const minutes of [20, 110, 3000]) {
			expectWithin(lossOfCover(inWork(load, minutes), kits), expected, 1e-12 * expected, "chance");
			// Forty people leave a kit waiting less often than anything here can be told by.
			const ofForty = lossOfCover(inWork(load, minutes, 40), kits);
			expectWithin(ofForty, expected, 1e-11 * expected, "chance");
		}
	});
});

/** Loss, then the load that 1 to 10, 15 and 20 kits carry at that loss. */
const carried: readonly (readonly [number, ...number[]])[] = [
	[0.001, 0.001, 0.046, 0.194, 0.439, 0.762, 1.1, 1.6, 2.1, 2.6, 3.1, 6.1, 9.4],
	[0.005, 0.005, 0.105, 0.349, 0.701, 1.132, 1.6, 2.2, 2.7, 3.3, 4.0, 7.4, 11.1],
	[0.01, 0.01, 0.153, 0.455, 0.869, 1.361, 1.9, 2.5, 3.1, 3.8, 4.5, 8.1, 12.0],
	[0.02, 0.02, 0.223, 0.602, 1.092, 1.657, 2.3, 2.9, 3.6, 4.3, 5.1, 9.0, 13.2],
	[0.05, 0.053, 0.381, 0.899, 1.525, 2.218, 3.0, 3.7, 4.5, 5.4, 6.2, 10.6, 15.2],
	[0.1, 0.111, 0.595, 1.271, 2.045, 2.881, 3.8, 4.7, 5.6, 6.5, 7.5, 12.5, 17.6],
	[0.2, 0.25, 1.0, 1.93, 2.945, 4.01, 5.1, 6.2, 7.4, 8.5, 9.7, 15.6, 21.6],
];
const kitCounts = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 15, 20];
const loads: ReferenceCase<{ loss: number; kits: number }>[] = carried.flatMap(([loss, ...row]) =>
	row.map((expected, i) => {
		const kits = kitCounts[i] as number;
		const corrected = loss === 0.2 && kits === 4;
		return {
			id: `loss ${loss} with ${kits} kits`,
			inputs: { loss, kits },
			expected,
			tolerance: kits <= 5 ? 1e-3 : 0.051,
			unit: "kits in reprocessing",
			why: kits <= 5 ? "printed to three decimals" : "printed to one decimal",
			source: corrected
				? printed(from.erlangTable, "printed 2.950, true 2.9452", "computed")
				: printed(from.erlangTable, `row ${kits}, blocking ${100 * loss} %`),
		};
	}),
);
/** Loss, then the load that 1 to 10 kits carry at it, to four decimals. */
const digits: readonly (readonly [number, ...number[]])[] = [
	[0.01, 0.0101, 0.1526, 0.4555, 0.8694, 1.3608, 1.909, 2.5009, 3.1276, 3.7825, 4.4612],
	[0.02, 0.0204, 0.2235, 0.6022, 1.0923, 1.6571, 2.2759, 2.9354, 3.6271, 4.3447, 5.084],
	[0.05, 0.0526, 0.3813, 0.8994, 1.5246, 2.2185, 2.9603, 3.7378, 4.543, 5.3702, 6.2157],
];
const furtherDigits = digits.flatMap(([loss, ...row]) =>
	row.map((expected, i) => ({
		id: `loss ${loss} with ${i + 1} kits, four decimals`,
		inputs: { loss, kits: i + 1 },
		expected,
		tolerance: 5e-5,
		unit: "kits in reprocessing",
		why: "to four decimals",
		source: printed("Telephone tables of the ITU, recomputed", "E11", "from memory"),
	})),
);
checkCases("published loads", [...loads, ...furtherDigits], ({ loss, kits }) =>
	loadWithLoss(loss, kits),
);

describe("an unmet need that takes no kit is never more frequent than one that does", () => {
	test.each(loads)("$id", ({ inputs: { loss, kits }, expected }) => {
		const ours = unmetPer1000(kits, inWork(expected));
		expect(ours).toBeGreaterThanOrEqual(1000 * erlangB(expected, kits) * (1 - 1e-12));
		if (kits <= 5) expect(ours).toBeGreaterThan(1000 * loss * 0.9);
	});
});

/** Load, then the kits needed for at most 5, 1 and 0.1 % unmet: those lost, those waiting. */
const sizes: readonly (readonly [number, readonly number[], readonly number[]])[] = [
	[0.075, [2, 2, 3], [2, 2, 3]],
	[0.3, [2, 3, 4], [2, 3, 4]],
	[0.15, [2, 2, 3], [2, 3, 3]],
	[0.6, [3, 4, 5], [3, 4, 5]],
	[1, [4, 5, 6], [4, 5, 6]],
	[2.5, [6, 7, 9], [6, 8, 10]],
];
function smallest(enough: (kits: number) => boolean): number {
	let kits = 1;
	while (!enough(kits)) kits++;
	return kits;
}
const shares = [0.05, 0.01, 0.001];
function needed(waiting: boolean): ReferenceCase<{ load: number; share: number }>[] {
	return sizes.flatMap(([load, lost, waited]) =>
		shares.map((share, i) => ({
			id: `load ${load}, at most ${share}`,
			inputs: { load, share },
			expected: (waiting ? waited : lost)[i] as number,
			tolerance: 0,
			unit: "kits",
			why: "a whole number",
			source: printed(from.recomputed, "births × share used × turnaround", "computed"),
		})),
	);
}
checkCases("kits needed where an unmet need takes no kit", needed(false), ({ load, share }) =>
	smallest((kits) => lossOfCover(inWork(load), kits) <= share),
);
checkCases("kits needed where it does", needed(true), ({ load, share }) =>
	smallest((kits) => unmetPer1000(kits, inWork(load)) <= 1000 * share),
);
