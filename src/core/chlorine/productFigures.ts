import {
	derive,
	type Figure,
	gather,
	nameFigure,
	refusedFigure,
	typedFigure,
} from "../calculation.ts";
import { type Place, problem } from "../problem.ts";
import { total } from "../quantities.ts";
import type { GoodRow } from "../read/readTable.ts";
import type { ReadWorkbook } from "../read/readWorkbook.ts";
import { type ChlorineRow, chlorineSheet } from "../sheets/chlorine.ts";
import { availableChlorine, type Strength } from "./availableChlorine.ts";
import { measureOut, type Preparation } from "./measureOut.ts";

/** A chlorine product and one preparation made with it. */
export interface ProductFigures {
	readonly name: Figure<string>;
	readonly line: number | null;
	readonly inUse: boolean;
	readonly strength: Figure<Strength>;
	readonly preparation: Figure<Preparation>;
}

const preparationLitres = total("preparation_litres", "Litres of a preparation", "L");

/** Litres of one preparation: the soak and what is kept for wiping. */
export function litresOfPreparation({ settings }: ReadWorkbook): Figure {
	return derive(preparationLitres, {
		parts: gather("Parts", "L", {
			soak: settings.soak_fill_litres,
			wipe: settings.wipe_solution_litres,
		}),
	});
}

/** Every product that could be understood, with the strength on its label. */
export function productFigures(read: ReadWorkbook): ProductFigures[] {
	return read.tables.chlorine.rows.map((row) => productFigure(read, row));
}

function productFigure(read: ReadWorkbook, { value, line }: GoodRow<ChlorineRow>): ProductFigures {
	const at = (column: string): Place => ({ file: chlorineSheet.file, line, column });
	const cell = <T>(column: keyof typeof chlorineSheet.columns, content: T): Figure<T> =>
		typedFigure(
			chlorineSheet.columns[column].label,
			chlorineSheet.columns[column].unit,
			content,
			at(column),
		);
	const strength = derive(
		availableChlorine,
		{
			form: cell("form", value.form),
			strength: cell("strength", value.strength),
			measure: cell("strength_measure", value.strength_measure),
			density: cell("density_kg_per_l", value.density_kg_per_l),
		},
		at("strength"),
	);
	return {
		name: cell("product", value.product),
		line,
		inUse: value.in_use === "yes",
		strength,
		preparation: preparationWith(read, strength, at("strength")),
	};
}

/** One preparation of the unit's solution from a product of the strength given. */
export function preparationWith(
	read: ReadWorkbook,
	strength: Figure<Strength>,
	place: Place,
): Figure<Preparation> {
	const { settings } = read;
	return derive(
		measureOut,
		{
			strength,
			litres: litresOfPreparation(read),
			targetPct: settings.target_strength_pct,
			stepMl: settings.measure_step_ml,
			stepGrams: settings.measure_step_g,
		},
		place,
	);
}

/** The product in use; where not exactly one is, every figure says so. */
export function productInUse(
	{ tables }: ReadWorkbook,
	products: readonly ProductFigures[],
): ProductFigures {
	const inUse = products.filter((product) => product.inUse);
	const bad = tables.chlorine.badRows;
	const place = { file: chlorineSheet.file, line: null, column: "in_use" };
	if (inUse.length === 1 && bad.length === 0) return inUse[0] as ProductFigures;
	const reasons =
		bad.length > 0
			? bad.flatMap((row) => row.problems)
			: [
					problem(place, {
						code: "product-in-use",
						received: `${inUse.length} products in use`,
						allowed: "exactly one product in use",
						message: `${inUse.length} chlorine products are marked as in use; mark exactly one with yes.`,
					}),
				];
	const none = refusedFigure("Product in use", "", place, ...reasons);
	return { name: none, line: null, inUse: true, strength: none, preparation: none };
}

/** For a sheet's row that names no lot. */
export const noLot = nameFigure("Lot", "");
