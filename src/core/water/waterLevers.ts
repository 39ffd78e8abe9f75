import { MINUTES_PER_DAY } from "../values/clock.ts";
import type { Hearth, WaterNeed } from "./batch.ts";
import { canBeScheduled } from "./boilingSchedule.ts";
import { fewestPots } from "./fewestPots.ts";

/** What would make all water ready in time, each by itself; undefined where that alone does not. */
export interface WaterLevers {
	/** Litres in a bucket, whole. */
	readonly bucketLitres: number | undefined;
	/** Minutes of cooling, for example in a bath of cold water. */
	readonly coolMinutes: number | undefined;
	readonly pots: number | undefined;
	readonly stoves: number | undefined;
	/** Pots for boiling in one evening what the next day needs. */
	readonly eveningPots: number | undefined;
}

const LEAST_BUCKET_LITRES = 2;
const MOST_STOVES = 4;
/** Cooling is tried in steps of a quarter of an hour. */
const COOLING_STEP = 15;

/** @param needs with buckets of `bucketLitres` */
export function waterLevers(
	needs: readonly WaterNeed[],
	hearth: Hearth,
	bucketLitres: number,
): WaterLevers {
	const does = (tried: readonly WaterNeed[], change: Partial<Hearth> = {}) =>
		canBeScheduled(tried, { ...hearth, ...change });
	const withBuckets = (litres: number) =>
		needs.map((need) =>
			need.isForPieces ? need : { ...need, litres: (need.litres * litres) / bucketLitres },
		);
	const smaller = downFrom(Math.ceil(bucketLitres) - 1, LEAST_BUCKET_LITRES, 1);
	const quicker = downFrom(
		Math.floor(hearth.coolMinutes / COOLING_STEP) * COOLING_STEP,
		COOLING_STEP,
		COOLING_STEP,
	);
	return {
		bucketLitres: firstThatDoes(smaller, (litres) => does(withBuckets(litres))),
		coolMinutes: firstThatDoes(quicker, (coolMinutes) => does(needs, { coolMinutes })),
		pots: fewestPots(needs, hearth),
		stoves: [2, 3, MOST_STOVES].find((stoves) => stoves > hearth.stoves && does(needs, { stoves })),
		eveningPots: eveningPots(needs, hearth),
	};
}

function downFrom(from: number, to: number, step: number): number[] {
	return Array.from(
		{ length: Math.max(0, Math.floor((from - to) / step) + 1) },
		(_, i) => from - i * step,
	);
}

/** The first of a falling list that does, where all after it do too. */
function firstThatDoes(
	list: readonly number[],
	does: (value: number) => boolean,
): number | undefined {
	let [low, high] = [0, list.length];
	while (low < high) {
		const middle = (low + high) >> 1;
		if (does(list[middle] as number)) high = middle;
		else low = middle + 1;
	}
	return list[low];
}

/** As many as hold the water of the day that needs most; undefined where it would be too old by the last round. */
function eveningPots(needs: readonly WaterNeed[], hearth: Hearth): number | undefined {
	const dayOf = ({ from }: WaterNeed) => Math.floor(from / MINUTES_PER_DAY);
	const pots = [...new Set(needs.map(dayOf))].map((which) => {
		const day = needs.filter((need) => dayOf(need) === which);
		const rinse = day.filter(({ isForPieces }) => !isForPieces);
		const pieces = day.filter(({ isForPieces }) => isForPieces);
		// Loads of pieces keep their hour, and a pot of their own.
		const fills = rinse.reduce(
			(sum, { litres }) => sum + Math.ceil(litres / hearth.potLitres),
			Math.min(1, pieces.length),
		);
		const evening = { ...hearth, pots: fills };
		const first = Math.min(...rinse.map(({ from }) => from));
		const together = [...rinse.map((need) => ({ ...need, from: first })), ...pieces];
		return canBeScheduled(together, evening) ? fills : Number.POSITIVE_INFINITY;
	});
	const most = Math.max(0, ...pots);
	return Number.isFinite(most) && most > 0 ? most : undefined;
}
