import { valueIn } from "../../outcome.ts";
import type { RoundsOfDay } from "../../rounds/roundsOfDay.ts";
import type { PlanTables } from "../planTables.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { kitsOfEachRound } from "./turnaroundMinutes.ts";

/** Kits that each round of the plan prepares for with so many in service; asked only where it is known how long rounds are, and so all of this. */
export function kitsPreparedFor(
	unit: UnitFigures,
	days: PlanTables["days"],
	kitsInService: number,
): number[] {
	return kitsOfEachRound({
		days: days.map((day) => valueIn(day.rounds) as RoundsOfDay),
		confidence: valueIn(unit.read.settings.plan_confidence) as number,
		kitsInService,
	});
}
