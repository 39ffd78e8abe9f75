import { nameFigure } from "../../calculation.ts";
import { type ComputedTable, onDemand } from "../../computedTable.ts";
import type { InSteps } from "../../inSteps.ts";
import { valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import { howSafeSheet } from "../../sheets/howSafe.ts";
import { type Measure, measures, planMeasures } from "../../sheets/planMeasures.ts";
import type { IsoDate } from "../../values/date.ts";
import type { Pair } from "../countFigures.ts";
import type { DayFigures } from "../dayFigures.ts";
import type { CoverFigures } from "../kits/coverFigures.ts";
import type { ItemStock } from "../store/itemStock.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { FiresOfPlan } from "../water/firesOfPlan.ts";
import { kitsSafety } from "./kitsSafety.ts";
import { leverWords } from "./leverWords.ts";
import { orderSafety } from "./orderSafety.ts";
import { priceEach } from "./priceEach.ts";
import { beyondOf, type SafetyRow, safetyOf } from "./safetyRow.ts";
import { waterSafety } from "./waterSafety.ts";

interface PlannedDay {
	readonly day: DayFigures;
	readonly measures: Record<Measure, Pair>;
	/** Boiled water that the rounds take, however much is boiled. */
	readonly taken: Pair;
}

/** Everything that the plan sets aside: the kits, each measure for the whole plan and for its days, the orders. */
export function howSafeTable(
	unit: UnitFigures,
	cover: CoverFigures,
	period: Record<Measure, Pair>,
	days: readonly PlannedDay[],
	items: () => readonly ItemStock[],
	fires: InSteps<FiresOfPlan>,
): ComputedTable<typeof howSafeSheet> {
	return onDemand(howSafeSheet, () => [
		...kitsSafety(unit, cover),
		...measures.flatMap((measure) => [
			...rowOf(unit, measure, period[measure], undefined, days),
			...days.flatMap(({ day, measures: ofDay }) =>
				rowOf(unit, measure, ofDay[measure], day.date, days, period[measure]),
			),
		]),
		...waterSafety(
			unit,
			fires.made,
			days.map(({ day, taken }) => ({ date: day.date, boiled: taken })),
		),
		...orderSafety(items()),
	]);
}

function rowOf(
	unit: UnitFigures,
	measure: Measure,
	{ expected, setAside }: Pair,
	date: IsoDate | undefined,
	days: readonly PlannedDay[],
	forAllDays?: Pair,
): SafetyRow[] {
	const kept = safetyOf(setAside);
	if (!kept) return [];
	const { outcome } = (days[0] as PlannedDay).day.preparation;
	const measured = outcome.ok ? outcome.value.measure : "";
	const of = planMeasures[measure].unit || measured;
	const facts = {
		isDay: date !== undefined && days.length > 1,
		forAllDays: forAllDays && valueIn(forAllDays.setAside),
		madeEachRound: valueIn(unit.read.settings.solution_made) === "each_round",
		canFillSoak:
			(valueIn(unit.kitsInService) ?? 0) > (valueIn(unit.kitsInLoad) ?? Number.POSITIVE_INFINITY),
		measured,
	};
	const isFar = valueIn(kept.far_safer) === "yes";
	return [
		{
			promise: nameFigure(say`What`, measure),
			of: nameFigure(say`Of`, ""),
			day: nameFigure(say`Day`, date ?? null),
			set_aside: setAside,
			expected,
			unit: nameFigure(say`Unit`, of),
			...kept,
			...beyondOf(setAside, expected, priceEach(unit, measure, measured)),
			lever: nameFigure(say`What would change it`, isFar ? leverWords(measure, facts, kept) : ""),
		},
	];
}
