import { derive, type Figure, refusedFigure } from "../../calculation.ts";
import type { Strength } from "../../chlorine/availableChlorine.ts";
import { isTooWeak } from "../../chlorine/isTooWeak.ts";
import { measureOut, type Preparation } from "../../chlorine/measureOut.ts";
import { firstReasons, valueIn } from "../../outcome.ts";
import { type Place, problem } from "../../problem.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { type ChlorineRow, chlorineSheet } from "../../sheets/chlorine.ts";
import { type LotsRow, lotsSheet } from "../../sheets/lots.ts";
import type { IsoDate } from "../../values/date.ts";
import { usableLots } from "../store/usableLots.ts";
import type { Dosing } from "./dosing.ts";
import { litresToMeasure } from "./litresOfPreparation.ts";
import { strengthOfLot } from "./strengthOfLot.ts";
import { strengthOnLabel } from "./strengthOnLabel.ts";

/** A chlorine product with the strength on its label. */
export interface ProductFigures {
	readonly name: Figure<string>;
	readonly row: GoodRow<ChlorineRow>;
	readonly inUse: boolean;
	readonly strength: Figure<Strength>;
}

/** One preparation with a product, from a lot or, where there is none, by the label. */
export interface LotPreparation {
	readonly lot: GoodRow<LotsRow> | undefined;
	readonly strength: Figure<Strength>;
	readonly preparation: Figure<Preparation>;
}

/** Every product that could be understood. */
export function productFigures(read: ReadWorkbook): ProductFigures[] {
	return read.tables.chlorine.rows.map((row) => {
		return {
			name: cellFigure(chlorineSheet, row, "product"),
			row,
			inUse: row.value.in_use === "yes",
			strength: strengthOnLabel(row),
		};
	});
}

/** The product in use, or why there is not exactly one. */
export function productInUse(
	{ tables }: ReadWorkbook,
	products: readonly ProductFigures[],
): ProductFigures | Figure<never> {
	const inUse = products.filter((product) => product.inUse);
	const bad = tables.chlorine.badRows.flatMap((row) => row.problems);
	const place = { file: chlorineSheet.file, line: null, column: "in_use" };
	if (inUse.length === 1 && bad.length === 0) return inUse[0] as ProductFigures;
	const notOne = problem(place, {
		code: "product-in-use",
		received: say`${inUse.length} products in use`,
		allowed: say`exactly one product in use`,
		message: say`${inUse.length} chlorine products are marked as in use; mark exactly one with yes.`,
	});
	return refusedFigure(
		say`Product in use`,
		"",
		place,
		...(bad.length > 0 ? firstReasons(bad) : [notOne]),
	);
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
export function preparationInUse(
	dosing: Dosing,
	inUse: ProductFigures | Figure<never>,
): (day: IsoDate) => Figure<Preparation> {
	return (day) => ("row" in inUse ? preparationOn(dosing, inUse, day).preparation : inUse);
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
