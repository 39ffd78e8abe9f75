import { SECONDS_PER_MINUTE } from "./fuelQuantity.ts";
import { heatToBoil, KJ_PER_KG_EVAPORATED } from "./heatToBoil.ts";

/** Water that is boiled for a round, in minutes after the plan's first midnight. */
export interface WaterNeed {
	readonly litres: number;
	/** The first rinse: it must be cool by then. Of pieces: it must boil by then. */
	readonly from: number;
	/** The end of the last rinse: it must not be too old by then. Of pieces: they come off the fire. */
	readonly until: number;
	/** A load of pieces is boiled in it, or steamed over it: one pot, at its hour, and nothing cools. */
	readonly isForPieces?: boolean;
}

/** On and in what water is boiled. */
export interface Hearth {
	readonly stoves: number;
	readonly pots: number;
	/** Pots side by side on one stove, sharing its heat. */
	readonly potsOnStove: number;
	readonly potLitres: number;
	readonly netKw: number;
	readonly drawnC: number;
	readonly boilingC: number;
	readonly holdMinutes: number;
	readonly coolMinutes: number;
	/** Minutes after the boil for which water may be used. */
	readonly keepsMinutes: number;
}

/** Pots that stand on one stove side by side. */
export interface Batch {
	/** Which need it is for. */
	readonly need: number;
	readonly litres: number;
	readonly startLitres: number;
	readonly pots: number;
	readonly heatMinutes: number;
	readonly kj: number;
	/** From lighting to the end of the hold. */
	readonly stoveMinutes: number;
	/** From filling until the water is cool. */
	readonly potMinutes: number;
	/** The hold ends no later, so that it has cooled, and no earlier, so that it is not too old. */
	readonly latestEnd: number;
	readonly earliestEnd: number;
	readonly isForPieces: boolean;
}

/** A batch with the minute at which its stove is lit. */
export interface PlacedBatch {
	readonly batch: Batch;
	readonly start: number;
}

/** Batches of one need that are alike: with small pots there may be thousands. */
export interface AlikeBatches {
	readonly batch: Batch;
	readonly times: number;
}

/** How the water of one round is shared among batches: full ones, then the rest. */
export function batchesOf(need: WaterNeed, index: number, hearth: Hearth): Batch[] {
	return alikeBatches(need, index, hearth).flatMap(({ batch, times }) =>
		Array.from({ length: times }, () => ({ ...batch })),
	);
}

/** The same, those that are alike together. */
export function alikeBatches(need: WaterNeed, index: number, hearth: Hearth): AlikeBatches[] {
	if (need.isForPieces) return [{ batch: batchOfPieces(need, index, hearth), times: 1 }];
	const { potLitres, holdMinutes, coolMinutes } = hearth;
	const atOnce = Math.min(hearth.potsOnStove, hearth.pots) * potLitres;
	const count = Math.ceil(need.litres / atOnce);
	if (count === 0) return [];
	const batchOf = (litres: number): Batch => {
		const fire = onFire(litres, holdMinutes, hearth);
		return {
			need: index,
			...fire,
			pots: Math.ceil(litres / potLitres),
			potMinutes: fire.stoveMinutes + coolMinutes,
			isForPieces: false,
			latestEnd: need.from - coolMinutes,
			earliestEnd: need.until - hearth.keepsMinutes,
		};
	};
	const rest = { batch: batchOf(need.litres - (count - 1) * atOnce), times: 1 };
	return count === 1 ? [rest] : [{ batch: batchOf(atOnce), times: count - 1 }, rest];
}

/** The step of the round says when it boils: neither earlier nor later. */
function batchOfPieces({ litres, from, until }: WaterNeed, index: number, hearth: Hearth): Batch {
	const fire = onFire(litres, until - from, hearth);
	return {
		need: index,
		...fire,
		pots: 1,
		potMinutes: fire.stoveMinutes,
		latestEnd: until,
		earliestEnd: until,
		isForPieces: true,
	};
}

function onFire(litres: number, holdMinutes: number, { netKw, drawnC, boilingC }: Hearth) {
	const startLitres = litres + (netKw * holdMinutes * SECONDS_PER_MINUTE) / KJ_PER_KG_EVAPORATED;
	const kj = heatToBoil(startLitres, drawnC, boilingC);
	const heatMinutes = kj / netKw / SECONDS_PER_MINUTE;
	return { litres, startLitres, heatMinutes, kj, stoveMinutes: heatMinutes + holdMinutes };
}
