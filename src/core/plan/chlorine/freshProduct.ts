import type { Figure } from "../../calculation.ts";
import type { Strength } from "../../chlorine/availableChlorine.ts";
import { lastUsableDay } from "../../chlorine/lastUsableDay.ts";
import { valueIn } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { addDays, dayNumber, type IsoDate } from "../../values/date.ts";
import type { ProductFigures } from "./productFigures.ts";
import { strengthOfLot } from "./strengthOfLot.ts";

/** Any day will do: only the days since matter. */
const MADE_ON: IsoDate = "2000-01-01";

/** Strength of a product some days after it was made, whatever lots are in the store. */
export function strengthAfter(
	read: ReadWorkbook,
	product: ProductFigures,
	days: number,
): Figure<Strength> {
	const blank = { received_on: null, arrives_on: null, expires_on: null };
	const value = { item: "", lot: "", quantity: 1, made_on: MADE_ON, ...blank };
	return strengthOfLot(read, product, { line: 0, value }, addDays(MADE_ON, days));
}

/** Days for which a fresh delivery makes the strength wanted; null where no end is in sight. */
export function daysFreshStaysStrong(read: ReadWorkbook, product: ProductFigures): number | null {
	const start = dayNumber(MADE_ON) as number;
	const strengthOn = (day: IsoDate) =>
		strengthAfter(read, product, (dayNumber(day) as number) - start);
	const target = valueIn(read.settings.target_strength_pct) ?? 0;
	const last = lastUsableDay(strengthOn, target, MADE_ON, null);
	if (last === undefined) return 0;
	return last === null ? null : (dayNumber(last) as number) - start;
}
