import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import type { Strength } from "../../chlorine/availableChlorine.ts";
import { lastUsableDay } from "../../chlorine/lastUsableDay.ts";
import { measureOut } from "../../chlorine/measureOut.ts";
import { answer } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { sources } from "../../sources.ts";
import { addDays, dayNumber, type IsoDate } from "../../values/date.ts";
import type { Dosing } from "./dosing.ts";
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

/** A product fresh from its maker, and how strong it is some days later. */
type Fresh = Strength & { readonly after: (days: number) => Figure<Strength> };

const staysStrong = calculation<{ strength: Fresh; targetPct: number }, number | null>({
	key: "stays_strong_days",
	label: say`A fresh delivery stays strong enough for`,
	unit: say`days`,
	formula: say`Last day on which the product, made today and losing strength in the store, still makes the strength wanted; blank where no end is in sight.`,
	source: sources.fading,
	inputs: {
		strength: measureOut.inputs.strength,
		targetPct: measureOut.inputs.targetPct,
	},
	example: {
		inputs: {
			strength: {
				form: "liquid",
				gramsPerLitre: 35,
				after: (days) => nameFigure("", { form: "liquid", gramsPerLitre: days <= 60 ? 5 : 4.9 }),
			},
			targetPct: 0.5,
		},
		result: 60,
		within: 0,
	},
	compute: ({ strength, targetPct }) => {
		const start = dayNumber(MADE_ON) as number;
		const on = (day: IsoDate) => strength.after((dayNumber(day) as number) - start);
		const last = lastUsableDay(on, targetPct, MADE_ON, null);
		if (last === undefined) return 0;
		return last === null ? null : (dayNumber(last) as number) - start;
	},
});

/** Days for which a fresh delivery makes the strength wanted; null where no end is in sight. */
export function freshStaysStrong(
	{ read, startPct }: Dosing,
	product: ProductFigures,
): Figure<number | null> {
	const { strength } = product;
	const after = (days: number) => strengthAfter(read, product, days);
	return derive(staysStrong, {
		strength: strength.outcome.ok
			? { ...strength, outcome: answer({ ...strength.outcome.value, after }) }
			: (strength as Figure<never>),
		targetPct: startPct,
	});
}
