import { calculation, derive, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { type Cover, oneByOne } from "../../kits/cover.ts";
import type { Reprocessing } from "../../kits/reprocessing.ts";
import { unmetPer1000 } from "../../kits/unmetPer1000.ts";
import { valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import { CURVE_BEYOND, CURVE_NEAREST, kitCoverSheet, MOST_ROWS } from "../../sheets/kitCover.ts";
import { sources } from "../../sources.ts";
import type { CoverFigures, KindCover } from "./coverFigures.ts";

/** Of 1,000 needs, how many find none ready with so many kits. */
export const unmetWithKits = calculation<{ kits: number; reprocessing: Reprocessing }, number>({
	key: "unmet_per_1000_uses",
	label: say`Times no kit is ready when needed`,
	unit: say`per 1\u202f000 uses`,
	formula: say`Over the rounds: mean uses beyond the kits from one round's start until the next one's kits are ready, less those until its own kits are ready; divided by all uses, × 1\u202f000. Where no kit was ready, a kit of the next round is still used. After each use: the chance that all kits are in reprocessing.`,
	source: sources.palm,
	inputs: {
		kits: { label: say`Kits`, unit: say`kits`, min: 1 },
		reprocessing: { label: say`When used kits come back`, unit: "" },
	},
	example: {
		// Chance of at least 2 of a Poisson count of mean 0.6 × 110 ÷ 1440.
		inputs: { kits: 2, reprocessing: oneByOne },
		result: 1.0188,
		within: 5e-6,
	},
	compute: ({ kits, reprocessing }) => unmetPer1000(kits, reprocessing),
});

/** For each kind, one row for each number of kits to some beyond those that the risk asks for, and around those needed. */
export function kitCoverTable({ kinds }: CoverFigures): ComputedTable<typeof kitCoverSheet> {
	return onDemand(kitCoverSheet, () => {
		const covered = kinds.flatMap((kind) => {
			const cover = valueIn(kind.cover);
			return cover ? [{ kind, cover }] : [];
		});
		const curves = REACHES.map((reach) => covered.map((each) => numbersOf(each, reach)));
		const fitting = curves.findIndex((numbers) => numbers.flat().length <= MOST_ROWS);
		return covered.flatMap((each, i) => rowsOfKind(each, curves.at(fitting)?.[i] as number[]));
	});
}

interface Covered {
	readonly kind: KindCover;
	/** What is enough of it. */
	readonly cover: Cover;
}

/** How far a curve goes. */
interface Reach {
	readonly fromOne: boolean;
	/** Beyond the kits that the risk asks for, and to either side of those needed. */
	readonly beyond: number;
}

/** The first with which the sheet is not too long; the last where none is. */
const REACHES: readonly Reach[] = [
	{ fromOne: true, beyond: CURVE_BEYOND },
	{ fromOne: false, beyond: CURVE_BEYOND },
	{ fromOne: false, beyond: CURVE_NEAREST },
];

function rowsOfKind(
	{ kind: { name, reprocessing }, cover: { kitsNeeded, decidedBy } }: Covered,
	numbers: readonly number[],
): ComputedRow<typeof kitCoverSheet>[] {
	return numbers.map((number) => {
		const kits = nameFigure(say`Kits`, number);
		return {
			kind: nameFigure(say`Kind`, name),
			kits,
			unmet_per_1000_uses: derive(unmetWithKits, { kits, reprocessing }),
			enough: nameFigure(say`Enough`, number >= kitsNeeded ? "yes" : "no"),
			deciding: nameFigure(say`Decided by`, number === kitsNeeded ? decidedBy : null),
		};
	});
}

/** Beds may ask for many more than the risk: in between, a need hardly ever finds none. */
function numbersOf({ kind, cover }: Covered, { fromOne, beyond }: Reach): number[] {
	const { kitsNeeded, byRisk } = cover;
	const own = valueIn(kind.kitsInService) ?? 0;
	const first = fromOne ? 1 : Math.max(1, byRisk - beyond);
	const last = kitsNeeded + beyond;
	const numbers = [
		...numbersBetween(first, byRisk + beyond),
		...numbersBetween(Math.max(first, kitsNeeded - beyond), last),
		...(own >= first && own <= last ? [own] : []),
	];
	return [...new Set(numbers)].sort((a, b) => a - b);
}

function numbersBetween(first: number, last: number): number[] {
	return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}
