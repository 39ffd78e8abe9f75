import { SECONDS_PER_MINUTE } from "./fuelQuantity.ts";
import { heatToBoil, KJ_PER_KG_EVAPORATED } from "./heatToBoil.ts";

/** Water of one round, in minutes after the plan's first midnight. */
export interface WaterNeed {
	readonly litres: number;
	/** The first rinse: it must be cool by then. */
	readonly from: number;
	/** The end of the last rinse: it must not be too old by then. */
	readonly until: number;
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
}

/** How the water of one round is shared among batches: full ones, then the rest. */
export function batchesOf(need: WaterNeed, index: number, hearth: Hearth): Batch[] {
	const { potLitres, netKw, drawnC, boilingC, holdMinutes, coolMinutes } = hearth;
	const atOnce = Math.min(hearth.potsOnStove, hearth.pots) * potLitres;
	const count = Math.ceil(need.litres / atOnce);
	return Array.from({ length: count }, (_, i) => {
		const litres = i < count - 1 ? atOnce : need.litres - (count - 1) * atOnce;
		const startLitres = litres + (netKw * holdMinutes * SECONDS_PER_MINUTE) / KJ_PER_KG_EVAPORATED;
		const kj = heatToBoil(startLitres, drawnC, boilingC);
		const heatMinutes = kj / netKw / SECONDS_PER_MINUTE;
		const stoveMinutes = heatMinutes + holdMinutes;
		return {
			need: index,
			litres,
			startLitres,
			pots: Math.ceil(litres / potLitres),
			heatMinutes,
			kj,
			stoveMinutes,
			potMinutes: stoveMinutes + coolMinutes,
			latestEnd: need.from - coolMinutes,
			earliestEnd: need.until - hearth.keepsMinutes,
		};
	});
}
