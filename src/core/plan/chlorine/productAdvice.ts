import { valueIn } from "../../outcome.ts";
import { advice, type Problem } from "../../problem.ts";
import { say } from "../../say.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { lotsSheet } from "../../sheets/lots.ts";
import { unitSheet } from "../../sheets/unit.ts";
import type { IsoDate } from "../../values/date.ts";
import { usableLots } from "../store/usableLots.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { strongLots } from "./lotPreparation.ts";
import { remarkOnLot } from "./remarkOnLot.ts";

/** What the reader should know about the chlorine products although every number stands. */
export function productAdvice(unit: UnitFigures, firstDay: IsoDate): Problem[] {
	return [
		...productWithoutLot(unit, firstDay),
		...lotInUse(unit, firstDay),
		...productsNotInStore(unit),
		...weakenedByWetKits(unit),
	];
}

/** Once for the setting, where wet kits are said to carry water in and the dose does not count it. */
function weakenedByWetKits({ read: { settings } }: UnitFigures): Problem[] {
	const dosed = valueIn(settings.dose_for_wet_kits);
	const millilitres = valueIn(settings.carry_in_ml_per_kit) ?? 0;
	if (dosed !== "no" || millilitres === 0) return [];
	return [
		advice(
			{ file: unitSheet.file, line: null, column: "dose_for_wet_kits" },
			{
				code: "not-dosed-for-wet-kits",
				received: dosed,
				allowed: "yes",
				message: say`The solution is mixed at the strength of the soak, and the ${millilitres} mL of water that each wet kit carries in bring it below. With yes it is mixed so much stronger that it is still reached after the last kit. Your protocol decides.`,
			},
		),
	];
}

function productWithoutLot({ productInUse, read }: UnitFigures, firstDay: IsoDate): Problem[] {
	const product = "row" in productInUse ? productInUse.row.value.product : undefined;
	if (product === undefined || usableLots(read, product, firstDay).length > 0) return [];
	return [
		advice(
			{ file: "lots.csv", line: null, column: "lot" },
			{
				code: "no-usable-lot",
				received: say`no lot`,
				allowed: say`a lot in the store that is not out of date`,
				message: say`No lot of ${product} can be used on ${firstDay}; the plan goes by the strength on its label.`,
			},
		),
	];
}

/** What to know of the lot that is measured out from on the first day. */
function lotInUse(unit: UnitFigures, firstDay: IsoDate): Problem[] {
	const { productInUse, read } = unit;
	if (!("row" in productInUse)) return [];
	const [first, next] = strongLots(unit, productInUse, firstDay);
	if (!first?.lot) return [];
	const remark = valueIn(remarkOnLot(read, productInUse, first, next)) ?? "";
	if (remark === "") return [];
	const { lot } = first.lot.value;
	return [
		advice(
			{ file: lotsSheet.file, line: first.lot.line, column: "lot" },
			{
				code: "lot-in-use",
				received: lot,
				allowed: say`a lot of known age with enough for one preparation`,
				message: say`Lot ${lot} of ${productInUse.row.value.product}: ${remark}`,
			},
		),
	];
}

function productsNotInStore({ read }: UnitFigures): Problem[] {
	const { chlorine, items } = read.tables;
	const known = new Set([...items.rows, ...items.badRows].map((row) => row.value.item));
	return chlorine.rows
		.filter(({ value }) => !known.has(value.product))
		.map(({ value, line }) =>
			advice(
				{ file: "chlorine.csv", line, column: "product" },
				{
					code: "unknown-item",
					received: value.product,
					allowed: say`an item listed in ${itemsSheet.file}`,
					message: say`${value.product} is not among the items of the store, so it cannot be counted or ordered.`,
				},
			),
		);
}
