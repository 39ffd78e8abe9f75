import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { partOf } from "../../partOf.ts";
import { boilingSheet } from "../../sheets/boiling.ts";
import { commonPractice } from "../../sources.ts";
import { MINUTES_PER_DAY, writeClock } from "../../values/clock.ts";
import { addDays, type IsoDate } from "../../values/date.ts";
import { type Boiling, boilingOfRound } from "../../water/boilingPlan.ts";
import type { RoundPlan } from "../roundPlans.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { roundBoiling, type StoveFigures, stoveFigures } from "../waterFigures.ts";

const litres = partOf<Boiling, "litres">(boilingOfRound, "litres", "Water needed", "L");
const startLitres = partOf<Boiling, "startLitres">(
	boilingOfRound,
	"startLitres",
	"Start with",
	"L",
);
const batches = partOf<Boiling, "batches">(boilingOfRound, "batches", "Batches", "batches");
const heating = partOf<Boiling, "heatMinutes">(boilingOfRound, "heatMinutes", "Heating", "min");

const dateAndTime = calculation<{ minutes: number; date: IsoDate }, string>({
	key: "light_by",
	label: "Light the stove by",
	unit: "date h:min",
	formula: "First rinse of the round − cooling − time held for each batch − heating.",
	source: commonPractice,
	rounding: "Down to the earlier minute.",
	caution: "It is often the evening before: look at the date.",
	inputs: {
		minutes: { label: "Minutes after the midnight of the round's day", unit: "min" },
		date: { label: "Date", unit: "" },
	},
	compute: ({ minutes, date }) =>
		`${addDays(date, Math.floor(minutes / MINUTES_PER_DAY))} ${writeClock(minutes)}`,
});

/** The rinse water of every round. */
export function boilingTable(unit: UnitFigures, rounds: readonly RoundPlan[]): ComputedTable {
	const stove = stoveFigures(unit.read);
	return onDemand(boilingSheet, () => rounds.map((round) => rowOf(unit, stove, round)));
}

function rowOf(unit: UnitFigures, stove: StoveFigures, round: RoundPlan): ComputedRow {
	const { settings } = unit.read;
	const { boiling, lightBy, fuel } = roundBoiling(unit.read, stove, round);
	const date = nameFigure("Date", round.date);
	const electric = stove.mjPerKg.outcome.ok && stove.mjPerKg.outcome.value === null;
	return {
		date,
		round: nameFigure("Round", round.round.value.label || writeClock(round.round.value.start)),
		litres: derive(litres, { whole: boiling }),
		batches: derive(batches, { whole: boiling }),
		light_by: derive(dateAndTime, { minutes: lightBy, date }),
		hold_minutes: settings.boil_hold_minutes,
		boiling_point_c: stove.boilingC,
		heat_minutes: derive(heating, { whole: boiling }),
		cool_minutes: stove.coolMinutes,
		fuel: settings.fuel as Figure<string>,
		fuel_quantity: fuel,
		fuel_measure: nameFigure("Measured in", electric ? "kWh" : "kg"),
		start_litres: derive(startLitres, { whole: boiling }),
	};
}
