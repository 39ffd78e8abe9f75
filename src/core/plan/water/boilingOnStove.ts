import { derive, type Figure } from "../../calculation.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { type Boiling, boilingOfRound } from "../../water/boilingOfRound.ts";
import { potsAtOnce } from "./hearthFigures.ts";
import type { StoveFigures } from "./stoveFigures.ts";

interface Water {
	readonly loads: Figure;
	readonly solutionLitres: Figure;
	readonly coolMinutes: Figure;
}

/** Boiling some water on the unit's stove, in its buckets and pots. */
export function boilingOnStove(
	{ settings }: ReadWorkbook,
	stove: StoveFigures,
	{ loads, solutionLitres, coolMinutes }: Water,
): Figure<Boiling> {
	return derive(boilingOfRound, {
		loads,
		bucketsPerLoad: settings.rinse_buckets,
		bucketLitres: settings.bucket_fill_litres,
		solutionLitres,
		potLitres: settings.pot_litres,
		pots: potsAtOnce(settings),
		netKw: stove.netKw,
		drawnC: settings.tap_water_c,
		boilingC: stove.boilingC,
		holdMinutes: stove.holdMinutes,
		coolMinutes,
	});
}
