import { type Figure, nameFigure, typedFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import { lotsSheet } from "../../sheets/lots.ts";
import { stockSheet } from "../../sheets/stock.ts";
import type { Waste } from "../../stock/projection.ts";
import type { IsoDate } from "../../values/date.ts";
import { lotFigures, NOT_USABLE } from "../chlorine/lotFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { ItemStock } from "./itemStock.ts";
import type { LotOnHand } from "./onHand.ts";

/** Every lot of the store, as the journal leaves it. */
export function stockTable(
	unit: UnitFigures,
	items: () => readonly ItemStock[],
	firstDay: IsoDate,
): ComputedTable<typeof stockSheet> {
	return onDemand(stockSheet, () => {
		const lastDays = new Map(
			lotFigures(unit, firstDay).map((lot) => [lot.lot.line, lot.lastUsableDay]),
		);
		return unit.read.lotsOnHand.map((lot) => {
			const { item, expires_on } = lot.lot.value;
			const stock = items().find(({ row }) => row.value.item === item);
			const waste =
				stock && valueIn(stock.projection)?.waste.find((w) => w.lot === lot.lot.value.lot);
			const last = lastDays.get(lot.lot.line);
			const until =
				lastDays.has(lot.lot.line) && last === undefined ? NOT_USABLE : (last ?? expires_on ?? "");
			return rowOf(lot, stock?.row.value.measure ?? "", until, waste);
		});
	});
}

function rowOf(
	onHand: LotOnHand,
	measure: string,
	until: string,
	waste: Waste | undefined,
): ComputedRow<typeof stockSheet> {
	const { lot, quantity, counted, short } = onHand;
	const cell = <T>(column: "item" | "lot" | "quantity", content: T): Figure<T> =>
		typedFigure(lotsSheet.columns[column].label, "", content, {
			file: lotsSheet.file,
			line: lot.line,
			column,
		});
	return {
		item: cell("item", lot.value.item),
		lot: cell("lot", lot.value.lot),
		measure: nameFigure(say`Measure`, measure),
		on_hand: cell("quantity", quantity),
		counted_difference: nameFigure(
			say`Counts against books`,
			onHand.lastCount ? signed(counted) : "",
		),
		usable_until: nameFigure(say`Usable until`, until),
		wasted: nameFigure(say`Will go to waste`, waste?.quantity ?? 0),
		remark: nameFigure(
			say`Remark`,
			short > 0
				? say`${Number(short.toFixed(3))} more were issued than the books held: count this lot.`
				: "",
		),
	};
}

/** A difference with its sign, a true minus; with a point, as files have it in every language. */
export function signed(difference: number): string {
	const size = Number(Math.abs(difference).toFixed(3));
	if (size === 0) return "0";
	return `${difference < 0 ? "−" : "+"}${size}`;
}
