import { describe, expect, test } from "vitest";
import { chanceAtLeast } from "../../src/core/counts/poisson.ts";
import { unmetPer1000 } from "../../src/core/kits/unmetPer1000.ts";
import { oneByOne } from "../core/kits/reprocessed.ts";
import { erlangB, loadWithLoss } from "./erlangB.ts";
import * as from from "./publications.ts";
import { checkCases, type Printed, printed, type ReferenceCase } from "./referenceCase.ts";

type Loss = { load: number; kits: number };

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
checkCases(
	"the bound itself",
	[
		point(2, 5, 0.0367, 5e-5, tested),
		point(10, 14, 0.0568, 5e-5, tested),
		point(5, 10, 0.0184, 5e-5, tested),
		point(5, 1, 0.8333333333, 1e-10, tested),
		point(20, 10, 0.5379631686320729, 1e-12, tested),
		point(200, 190, 0.08869684386923561, 1e-12, tested),
		point(25, 30, 0.05, 5e-3, printed("Wolfram, loss probabilities for a queue", "example")),
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
	],
	({ load, kits }) => erlangB(load, kits),
);

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
checkCases("published loads", loads, ({ loss, kits }) => loadWithLoss(loss, kits));

describe("an unmet need that takes no kit is never more frequent than one that does", () => {
	test.each(loads)("$id", ({ inputs: { loss, kits }, expected }) => {
		const day = 1440;
		const ours = unmetPer1000(kits, oneByOne([expected], day));
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
	smallest((kits) => erlangB(load, kits) <= share),
);
checkCases("kits needed where it does", needed(true), ({ load, share }) =>
	smallest((kits) => chanceAtLeast(kits, load) <= share),
);
