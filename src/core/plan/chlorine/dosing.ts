import { derive, type Figure } from "../../calculation.ts";
import { strengthToStartFrom } from "../../chlorine/strengthToStartFrom.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";

/** What every preparation of the soak is measured out by. */
export interface Dosing {
	readonly read: ReadWorkbook;
	/** Wet kits through one preparation. */
	readonly kitsThroughBath: Figure;
	/** Strength that is mixed: the soak's, and what wet kits take from it. */
	readonly startPct: Figure;
}

/** @param kits wet kits through one preparation; a full load where nothing else is known */
export function dosingFor(
	read: ReadWorkbook,
	kits: Figure = read.settings.soak_capacity_kits,
): Dosing {
	const { settings } = read;
	return {
		read,
		kitsThroughBath: kits,
		startPct: derive(strengthToStartFrom, {
			targetPct: settings.target_strength_pct,
			bathLitres: settings.soak_fill_litres,
			kits,
			mlPerKit: settings.carry_in_ml_per_kit,
			forWetKits: settings.dose_for_wet_kits,
		}),
	};
}
