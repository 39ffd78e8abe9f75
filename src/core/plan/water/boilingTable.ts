import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { partOf } from "../../partOf.ts";
import { say } from "../../say.ts";
import { boilingSheet } from "../../sheets/boiling.ts";
import { commonPractice } from "../../sources.ts";
import { MINUTES_PER_DAY, writeClock } from "../../values/clock.ts";
import { addDays, type IsoDate } from "../../values/date.ts";
import { type Boiling, boilingOfRound } from "../../water/boilingOfRound.ts";
import type { RoundPlan } from "../rounds/roundPlans.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { roundBoiling } from "./roundBoiling.ts";
import { type StoveFigures, stoveFigures } from "./stoveFigures.ts";

const litres = partOf<Boiling, "litres">(boilingOfRound, "litres", say`Water needed`, "L");
const startLitres = partOf<Boiling, "startLitres">(
	boilingOfRound,
	"startLitres",
	say`Start with`,
	"L",
);
const batches = partOf<Boiling, "batches">(boilingOfRound, "batches", say`Batches`, say`batches`);
const heating = partOf<Boiling, "heatMinutes">(boilingOfRound, "heatMinutes", say`Heating`, "min");

const dateAndTime = calculation<{ minutes: number; date: IsoDate }, string>({
	key: "light_by",
	label: say`Light the stove by`,
	unit: say`date h:min`,
	formula: say`First rinse of the round − cooling − time held for each batch − heating.`,
	source: commonPractice,
	rounding: say`Down to the earlier minute.`,
	caution: say`It is often the evening before: look at the date.`,
	inputs: {
		minutes: { label: say`Minutes after the midnight of the round's day`, unit: "min" },
		date: { label: say`Date`, unit: "" },
	},
	example: {
		inputs: { minutes: -30, date: "2027-03-02" },
		result: "2027-03-01 23:30",
		within: 0,
	},
	compute: ({ minutes, date }) =>
		`${addDays(date, Math.floor(minutes / MINUTES_PER_DAY))} ${writeClock(minutes)}`,
});

/** The rinse water of every round. */
export function boilingTable(
	unit: UnitFigures,
	rounds: readonly RoundPlan[],
): ComputedTable<typeof boilingSheet> {
	const stove = stoveFigures(unit.read);
	return onDemand(boilingSheet, () => rounds.map((round) => rowOf(unit, stove, round)));
}

function rowOf(
	unit: UnitFigures,
	stove: StoveFigures,
	round: RoundPlan,
): ComputedRow<typeof boilingSheet> {
	const { settings } = unit.read;
	const { boiling, lightBy, fuel } = roundBoiling(unit.read, stove, round);
	const date = nameFigure(say`Date`, round.date);
	const electric = stove.mjPerKg.outcome.ok && stove.mjPerKg.outcome.value === null;
	return {
		date,
		round: nameFigure(say`Round`, round.round.value.label || writeClock(round.round.value.start)),
		litres: derive(litres, { whole: boiling }),
		batches: derive(batches, { whole: boiling }),
		light_by: derive(dateAndTime, { minutes: lightBy, date }),
		hold_minutes: stove.holdMinutes,
		boiling_point_c: stove.boilingC,
		heat_minutes: derive(heating, { whole: boiling }),
		cool_minutes: stove.coolMinutes,
		fuel: settings.fuel as Figure<string>,
		fuel_quantity: fuel,
		fuel_measure: nameFigure(say`Measured in`, electric ? "kWh" : "kg"),
		start_litres: derive(startLitres, { whole: boiling }),
	};
}
