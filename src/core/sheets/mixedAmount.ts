import { type Column, computed } from "../column.ts";
import { say } from "../say.ts";
import { amount } from "./computedValues.ts";

/** In the place of the unit: the row's column “measure” tells it. */
export const inMeasure = say`in the item's measure`;
/** In the place of the unit: the row's column “unit” tells it. */
export const seeUnit = say`see unit`;

type Said = Pick<Column<number | null>, "label" | "unit" | "rounds" | "help" | "added">;

/** A column of amounts of which each row has a measure of its own; blank where one is not known. */
export function mixedAmount(column: Said): Column<number | null> {
	return computed({ ...column, value: amount(), decimals: 1, mixed: true });
}
