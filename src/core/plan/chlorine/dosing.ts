import { derive, type Figure, nameFigure } from "../../calculation.ts";
import { strengthToStartFrom } from "../../chlorine/strengthToStartFrom.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { isMixed, soaksPieces } from "./litresOfPreparation.ts";

/** What every preparation of the soak is measured out by. */
export interface Dosing {
	readonly read: ReadWorkbook;
	/** Wet kits through one preparation. */
	readonly kitsThroughBath: Figure;
	/** Strength that is mixed: the soak's, and what wet kits take from it. */
	readonly startPct: Figure;
}

/** @param fullest wet kits through one preparation; a full load where nothing else is known, none where none is soaked */
export function dosingFor(
	read: ReadWorkbook,
	fullest: Figure = read.settings.soak_capacity_kits,
): Dosing {
	const { settings } = read;
	const onlyWiped = isMixed(read) && !soaksPieces(read);
	const kits = onlyWiped ? nameFigure(fullest.label, 0) : fullest;
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
