import {
	moneyForms,
	type NumberForms,
	numberForms,
	percentForms,
	shareForms,
} from "../../values/numberForms.ts";
import type { Written } from "../../values/valueKind.ts";
import type { BlockCell } from "./blockTable.ts";
import type { TwoReadings } from "./twoReadings.ts";

const forms: Partial<Record<Written, (text: string) => NumberForms>> = {
	number: numberForms,
	money: moneyForms,
	percent: percentForms,
	share: shareForms,
};

const isSame = (one: string, other: string) => Number(one) === Number(other);

/** A cell of numbers with the decimal point (first) and the decimal comma (second). */
export function numberReadings(cell: BlockCell): TwoReadings[] {
	const { written } = cell.column.value;
	const read = written && forms[written];
	if (!read) return [];
	const { point, comma } = read(cell.text);
	const second = cell.isNumber ? point : comma;
	const isThousandsToSome = Number(point) < Number(second);
	return [{ cell, first: point, second, isSame, ...(isThousandsToSome && { ownOnly: "first" }) }];
}
