import { type Figure, nameFigure } from "../../calculation.ts";
import type { Strength } from "../../chlorine/availableChlorine.ts";
import { lastUsableDay } from "../../chlorine/lastUsableDay.ts";
import { valueIn } from "../../outcome.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { say } from "../../say.ts";
import type { LotsRow } from "../../sheets/lots.ts";
import type { IsoDate } from "../../values/date.ts";
import { arrivesOn, lotsOnHand } from "../store/lotsOnHand.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { ProductFigures } from "./productFigures.ts";
import { strengthOfLot } from "./strengthOfLot.ts";

/** A lot of a chlorine product, in the store or on its way. */
export interface LotFigures {
	readonly product: ProductFigures;
	readonly lot: GoodRow<LotsRow>;
	/** null where it is in the store. */
	readonly arrivesOn: IsoDate | null;
	readonly strengthOn: (day: IsoDate) => Figure<Strength>;
	/** undefined: too weak or out of date already; null: no end in sight, or nobody knows how strong it is. */
	readonly lastUsableDay: IsoDate | null | undefined;
}

/** Stands on the sheets in the place of a last usable day. */
export const NOT_USABLE = say`not usable`;

/** Every lot of every chlorine product, in the order of the store's sheet. */
export function lotFigures(unit: UnitFigures, firstDay: IsoDate): LotFigures[] {
	const target = valueIn(unit.startPct) ?? 0;
	return unit.products.flatMap((product) =>
		lotsOnHand(unit.read)
			.filter(({ row }) => row.value.item === product.row.value.product)
			.map((onHand) => {
				const { row: lot } = onHand;
				const strengthOn = (day: IsoDate) => strengthOfLot(unit.read, product, lot, day);
				const last = strengthOn(firstDay).outcome.ok
					? lastUsableDay(strengthOn, target, firstDay, lot.value.expires_on)
					: null;
				return { product, lot, arrivesOn: arrivesOn(onHand), strengthOn, lastUsableDay: last };
			}),
	);
}

/** The cell of a last usable day; without a value where nobody knows how strong the lot is. */
export function usableUntil(
	{ strengthOn }: LotFigures,
	firstDay: IsoDate,
	words: string,
): Figure<string> {
	const { outcome } = strengthOn(firstDay);
	const cell = nameFigure(say`Usable until`, words);
	return outcome.ok ? cell : { ...cell, outcome };
}
