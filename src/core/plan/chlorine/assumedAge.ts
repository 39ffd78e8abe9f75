import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { givenFigure } from "../../read/cellFigure.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { type LotsRow, lotsSheet } from "../../sheets/lots.ts";
import { estimate } from "../../source.ts";
import { daysFrom, type IsoDate } from "../../values/date.ts";

interface Inputs {
	readonly assumedDays: number;
	readonly firstDay: IsoDate;
	/** null: in the store already. */
	readonly arrivesOn: IsoDate | null;
	readonly day: IsoDate;
}

/** The age that a liquid counts as whose age nobody knows. */
export const assumedAge = calculation<Inputs, number>({
	key: "assumed_age_days",
	label: say`Age that is assumed`,
	unit: say`days`,
	formula: say`A liquid of unknown age counts as so many days old on the plan's first day, or when it arrives where that is later, and grows older by each day from then on.`,
	source: estimate,
	inputs: {
		assumedDays: { label: say`A liquid of unknown age counts as`, unit: say`days old`, min: 0 },
		firstDay: { label: say`First day of the plan`, unit: "" },
		arrivesOn: { label: lotsSheet.columns.arrives_on.label, unit: "" },
		day: { label: say`Day`, unit: "" },
	},
	example: {
		inputs: {
			assumedDays: 180,
			firstDay: "2027-03-01",
			arrivesOn: null,
			day: "2027-03-31",
		},
		result: 210,
		within: 0,
	},
	compute: ({ assumedDays, firstDay, arrivesOn, day }) => {
		const from = arrivesOn !== null && arrivesOn > firstDay ? arrivesOn : firstDay;
		return assumedDays + Math.max(0, daysFrom(from, day));
	},
});

/** Days that a liquid of unknown age counts as old on a day of the plan. */
export function assumedAgeOn(
	{ settings }: ReadWorkbook,
	lot: GoodRow<LotsRow>,
	day: IsoDate,
): Figure {
	return derive(assumedAge, {
		assumedDays: settings.assumed_age_days,
		firstDay: settings.plan_start,
		arrivesOn:
			givenFigure(lotsSheet, lot, "arrives_on") ??
			nameFigure(lotsSheet.columns.arrives_on.label, null),
		day: nameFigure(say`Day`, day),
	});
}
