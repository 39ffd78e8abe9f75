import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import type { Strength } from "../../chlorine/availableChlorine.ts";
import { lastUsableDay } from "../../chlorine/lastUsableDay.ts";
import { measureOut } from "../../chlorine/measureOut.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { sources } from "../../sources.ts";
import { addDays, dayNumber, type IsoDate } from "../../values/date.ts";
import type { ProductFigures } from "./productFigures.ts";
import { strengthOnDay } from "./strengthOfLot.ts";

/** Any day will do: only the days since matter. */
const MADE_ON: IsoDate = "2000-01-01";

/** Strength of a product some days after it was made, whatever lots are in the store. */
export function strengthAfter(
	read: ReadWorkbook,
	product: ProductFigures,
	days: number,
): Figure<Strength> {
	return strengthOnDay(read, product, nameFigure(say`Made on`, MADE_ON), addDays(MADE_ON, days));
}

/** Days for which a fresh delivery makes the strength wanted; null where no end is in sight. */
export function freshStaysStrong(
	read: ReadWorkbook,
	product: ProductFigures,
): Figure<number | null> {
	const start = dayNumber(MADE_ON) as number;
	const strengthOn = (day: IsoDate) =>
		strengthAfter(read, product, (dayNumber(day) as number) - start);
	const staysStrong = calculation<{ strength: Strength; targetPct: number }, number | null>({
		key: "stays_strong_days",
		label: say`A fresh delivery stays strong enough for`,
		unit: say`days`,
		formula: say`Last day on which the product, made today and fading in the store, still makes the strength wanted; blank where no end is in sight.`,
		source: sources.fading,
		inputs: {
			strength: measureOut.inputs.strength,
			targetPct: measureOut.inputs.targetPct,
		},
		compute: ({ targetPct }) => {
			const last = lastUsableDay(strengthOn, targetPct, MADE_ON, null);
			if (last === undefined) return 0;
			return last === null ? null : (dayNumber(last) as number) - start;
		},
	});
	return derive(staysStrong, {
		strength: product.strength,
		targetPct: read.settings.target_strength_pct,
	});
}
