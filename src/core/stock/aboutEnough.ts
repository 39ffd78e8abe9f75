import { type Counts, setAside } from "../counts/counts.ts";
import { laguerreNodes } from "../counts/laguerreNodes.ts";
import { type Moments, mixedMoments, momentsIn, momentsOfSum } from "../counts/moments.ts";
import { shiftedGamma } from "../counts/shiftedGamma.ts";
import { spanShape } from "../counts/spanShape.ts";
import { memoize, memoizeByObject } from "../memoize.ts";
import { ofEach } from "../ofEach.ts";
import { knownAtLevel } from "../rounds/atLevel.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { meanUse } from "./meanUse.ts";
import { momentsOfUse } from "./momentsOfUse.ts";
import { type UseInputs, useHangsOn } from "./useInputs.ts";

/** Parts of the mean in which it is counted. */
const PARTS = 1000;
/** Enough for three moments over the level. */
const NODES = 3;

/** More steps are not listed. */
const FURTHEST = 100_000;

const nodesOf = memoize(laguerreNodes);

/** An amount that is enough about as surely as asked, by the mean, variance and skewness of the use: to choose steps by, no more. */
export function aboutEnough(use: UseInputs, confidence: number): number {
	const size = meanUse(use) / PARTS;
	return size === 0 ? 0 : setAside(aboutUsed(use, size), confidence) * size;
}

/** About how likely each amount is, in steps of a size, by the mean, variance and skewness of the use. */
export function aboutUsed(use: UseInputs, size: number): Counts {
	return shiftedGamma(momentsIn(size, momentsOver(use.days)(use)), FURTHEST);
}

const momentsOver = memoizeByObject((_days: readonly RoundsOfDay[]) =>
	memoize(momentsAdded, useHangsOn),
);

function momentsAdded({ rates, days, loads, descaleEvery }: UseInputs): Moments {
	const perRound = rates.perRound + (descaleEvery > 0 ? rates.perDescale / descaleEvery : 0);
	const even = { rates: { ...rates, perRound }, loads };
	const momentsOn = momentsOfUse(even, AS_TYPED);
	const momentsAt = (factor: number): Moments =>
		momentsOfSum(
			ofEach(days, (day) => momentsOn(knownAtLevel(day)(factor))),
			undefined,
		);
	const shape = spanShape(days.flatMap(({ forecast }) => (forecast ? [forecast.level] : [])));
	return Number.isFinite(shape) ? mixedMoments(nodesOf(shape, NODES), momentsAt) : momentsAt(1);
}

const AS_TYPED = { size: 1, of: (amount: number) => amount, more: 0, most: FURTHEST };
