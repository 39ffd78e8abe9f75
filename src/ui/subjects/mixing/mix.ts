import type { ComputedRow, FiguresOf } from "../../../core/computedTable.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { dayPlanSheet } from "../../../core/sheets/dayPlan.ts";
import { mixingSheet } from "../../../core/sheets/mixing.ts";
import { mixingDaysSheet } from "../../../core/sheets/mixingDays.ts";
import type { preparationColumns } from "../../../core/sheets/preparationColumns.ts";
import type { wallTableSheet } from "../../../core/sheets/wallTable.ts";
import { waitsFor } from "../../format/waitsFor.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import { sentenceIn } from "../../state/sentenceIn.ts";
import type { State } from "../../state/store.ts";
import { storeOf } from "./strengthView.ts";

/** One preparation of chlorine solution as it is measured out. */
export interface Mix {
	readonly product: string;
	/** Blank where it goes by the label. */
	readonly lot: string;
	readonly litres: number;
	readonly quantity: number;
	readonly measure: string;
	readonly waterLitres: number;
	readonly strengthPct: number;
	/** Litres for which this much product is exact; undefined where the sheet does not say. */
	readonly exactLitres: number | undefined;
	/** Last day for which it is dosed; "" where it is for one day. */
	readonly until: string;
}

/** What the mixing sheets have in common. */
type MixRow = FiguresOf<typeof preparationColumns> &
	Pick<ComputedRow<typeof wallTableSheet>, "lot"> &
	Partial<Pick<ComputedRow<typeof wallTableSheet>, "exact_litres" | "until">>;

/** The mix that a row of a mixing sheet describes; undefined where a number of it waits. */
export function mixOf(row: MixRow, product: string): Mix | undefined {
	const [litres, quantity, waterLitres, strengthPct] = [
		numberIn(row.litres),
		numberIn(row.product_quantity),
		numberIn(row.water_litres),
		numberIn(row.strength_made_pct),
	];
	if (litres === undefined || quantity === undefined) return undefined;
	if (waterLitres === undefined || strengthPct === undefined) return undefined;
	return {
		product,
		lot: wordIn(row.lot),
		litres,
		quantity,
		measure: wordIn(row.product_measure),
		waterLitres,
		strengthPct,
		exactLitres: numberIn(row.exact_litres),
		until: wordIn(row.until),
	};
}

/** The product in use on the first day. */
export function nameOfProductInUse(state: State): string {
	return wordIn(rowsOf(state.plan, dayPlanSheet)[0]?.chlorine_product);
}

/** One preparation on each day with the product in use; a day whose numbers wait has none. */
export function mixOfDays(
	state: State,
): { readonly date: string; readonly mix: Mix | undefined }[] {
	const product = nameOfProductInUse(state);
	return rowsOf(state.plan, mixingDaysSheet).map((row) => ({
		date: wordIn(row.date),
		mix: mixOf(row, product),
	}));
}

/**
 * What can be mixed on the first day from the product in use: the unit's own
 * preparation first, then every other size of container, from the same lot.
 */
export function mixesOfFirstDay(state: State): Mix[] {
	const own = mixOfDays(state)[0]?.mix;
	if (!own) return [];
	const sizes = storeOf(state)?.lots.sizesOf(own.product, own.lot) ?? [];
	const others = sizes.map(({ strengthMadePct, ...each }) => ({
		...own,
		...each,
		strengthPct: strengthMadePct,
	}));
	return [own, ...others.filter((mix) => mix.litres !== own.litres)];
}

/** What the mixing sheet remarks on this product and lot. */
export function remarkOn(state: State, { product, lot }: Mix): string {
	const row = rowsOf(state.plan, mixingSheet).find(
		(r) => wordIn(r.product) === product && wordIn(r.lot) === lot,
	);
	return sentenceIn(row?.remark);
}

/** What the mixing sheet knows of the lot of one of its rows; "" where there is nothing to know. */
export function remarkOnLotIn({ remark }: ComputedRow<typeof mixingSheet>): string {
	const { ofLot } = remark.origin.kind === "computed" ? remark.origin.inputs : {};
	return ofLot ? sentenceIn(ofLot as typeof remark) : "";
}

/** Why there is nothing to mix by on the first day; "" where no reason is known. */
export function whyNoMix(state: State): string {
	const cell = rowsOf(state.plan, mixingDaysSheet)[0]?.product_quantity;
	return waitsFor(cell?.outcome);
}
