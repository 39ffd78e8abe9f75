import { derive, type Figure } from "../../calculation.ts";
import type { Strength } from "../../chlorine/availableChlorine.ts";
import { isTooWeak } from "../../chlorine/isTooWeak.ts";
import { measureOut, type Preparation } from "../../chlorine/measureOut.ts";
import { valueIn } from "../../outcome.ts";
import type { Place } from "../../problem.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { chlorineSheet } from "../../sheets/chlorine.ts";
import { type LotsRow, lotsSheet } from "../../sheets/lots.ts";
import type { IsoDate } from "../../values/date.ts";
import { usableLots } from "../store/usableLots.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { Dosing } from "./dosing.ts";
import { litresToMeasure } from "./litresOfPreparation.ts";
import type { ProductFigures } from "./productFigures.ts";
import { strengthOfLot } from "./strengthOfLot.ts";

/** One preparation with a product, from a lot or, where there is none, by the label. */
export interface LotPreparation {
	readonly lot: GoodRow<LotsRow> | undefined;
	readonly strength: Figure<Strength>;
	readonly preparation: Figure<Preparation>;
}

/**
 * The lots of a product that can be used on a day, first to expire first, each with
 * its strength that day. Lots that have faded below the strength to mix are left out.
 */
export function strongLots(
	dosing: Dosing,
	product: ProductFigures,
	day: IsoDate,
): LotPreparation[] {
	return lotsWithStrength(dosing, product, day).filter(isStrong(dosing));
}

function isStrong({ startPct }: Dosing): (lot: LotPreparation) => boolean {
	const pct = valueIn(startPct) ?? 0;
	return ({ strength }) => !isTooWeak(strength, pct);
}

/** Every lot of a product in the store and in date, whatever its strength. */
export function lotsWithStrength(
	dosing: Dosing,
	product: ProductFigures,
	day: IsoDate,
): LotPreparation[] {
	return usableLots(dosing.read, product.row.value.product, day).map((lot) =>
		lotWithStrength(dosing, product, lot, day),
	);
}

function lotWithStrength(
	dosing: Dosing,
	product: ProductFigures,
	lot: GoodRow<LotsRow>,
	day: IsoDate,
): LotPreparation {
	const strength = strengthOfLot(dosing.read, product, lot, day);
	const place = { file: lotsSheet.file, line: lot.line, column: "lot" };
	return { lot, strength, preparation: preparationWith(dosing, strength, place) };
}

/** What a preparation takes on a day: from the lot to use first; without any lot, by the label. */
export function preparationOn(
	dosing: Dosing,
	product: ProductFigures,
	day: IsoDate,
): LotPreparation {
	let weak: LotPreparation | undefined;
	for (const lot of usableLots(dosing.read, product.row.value.product, day)) {
		const its = lotWithStrength(dosing, product, lot, day);
		if (isStrong(dosing)(its)) return its;
		weak ??= its;
	}
	return (
		weak ?? {
			lot: undefined,
			strength: product.strength,
			preparation: preparationByLabel(dosing, product),
		}
	);
}

/** One preparation as a fresh delivery makes it. */
export function preparationByLabel(
	dosing: Dosing,
	{ row, strength }: ProductFigures,
): Figure<Preparation> {
	const place = { file: chlorineSheet.file, line: row.line, column: "strength" };
	return preparationWith(dosing, strength, place);
}

/** One preparation on a day with the product in use, or why there is not exactly one. */
export function preparationInUse(unit: UnitFigures, day: IsoDate): Figure<Preparation> {
	const { productInUse: inUse } = unit;
	return "row" in inUse ? preparationOn(unit, inUse, day).preparation : inUse;
}

/** One preparation from a product of the strength given: the unit's own litres and strength, unless others are. */
export function preparationWith(
	{ read, startPct }: Dosing,
	strength: Figure<Strength>,
	place: Place,
	litres: Figure = litresToMeasure(read),
	targetPct: Figure = startPct,
): Figure<Preparation> {
	const { measure_step_ml: stepMl, measure_step_g: stepGrams } = read.settings;
	return derive(measureOut, { strength, litres, targetPct, stepMl, stepGrams }, place);
}
