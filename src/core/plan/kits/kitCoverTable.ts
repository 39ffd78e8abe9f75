import { calculation, derive, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { type Cover, oneByOne } from "../../kits/cover.ts";
import type { Reprocessing } from "../../kits/reprocessing.ts";
import { unmetPer1000 } from "../../kits/unmetPer1000.ts";
import { valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import {
	CURVE_BEYOND,
	kitCoverSheet,
	MOST_KITS_FROM_ONE,
	MOST_WHOLE_CURVES,
} from "../../sheets/kitCover.ts";
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
	return onDemand(kitCoverSheet, () =>
		kinds.flatMap((kind) => rowsOfKind(kind, kinds.length <= MOST_WHOLE_CURVES)),
	);
}

function rowsOfKind(
	{ name, cover, kitsInService, reprocessing }: KindCover,
	mayBeginAtOne: boolean,
): ComputedRow<typeof kitCoverSheet>[] {
	if (!cover.outcome.ok) return [];
	const { kitsNeeded, decidedBy } = cover.outcome.value;
	const own = valueIn(kitsInService) ?? 0;
	return numbersOf(cover.outcome.value, own, mayBeginAtOne).map((number) => {
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
function numbersOf({ kitsNeeded, byRisk }: Cover, own: number, mayBeginAtOne: boolean): number[] {
	const isWhole = mayBeginAtOne && byRisk <= MOST_KITS_FROM_ONE;
	const first = isWhole ? 1 : Math.max(1, byRisk - CURVE_BEYOND);
	const last = kitsNeeded + CURVE_BEYOND;
	const numbers = [
		...numbersBetween(first, byRisk + CURVE_BEYOND),
		...numbersBetween(Math.max(first, kitsNeeded - CURVE_BEYOND), last),
		...(own >= first && own <= last ? [own] : []),
	];
	return [...new Set(numbers)].sort((a, b) => a - b);
}

function numbersBetween(first: number, last: number): number[] {
	return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}
