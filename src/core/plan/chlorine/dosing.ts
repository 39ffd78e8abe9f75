import { derive, type Figure, nameFigure } from "../../calculation.ts";
import { kitsInFullLoad } from "../../chlorine/kitsInFullLoad.ts";
import { strengthToStartFrom } from "../../chlorine/strengthToStartFrom.ts";
import { listFigure } from "../../read/listFigure.ts";
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
export function dosingFor(read: ReadWorkbook, fullest: Figure = fullLoad(read)): Dosing {
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

/** Kits in a full soak; what it holds where nobody knows how many kits there are. */
export function fullLoad({ settings, tables }: ReadWorkbook): Figure {
	const capacityKits = settings.soak_capacity_kits;
	const { label, unit } = kitsInFullLoad.inputs.kitsOfUnit;
	const kitsOfUnit = listFigure(label, unit, tables.kits, (rows) => rows.length);
	return kitsOfUnit.outcome.ok
		? derive(kitsInFullLoad, { capacityKits, kitsOfUnit })
		: capacityKits;
}
