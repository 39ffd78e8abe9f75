import { derive } from "../../calculation.ts";
import { kitsThroughBath } from "../../chlorine/kitsThroughBath.ts";
import { roundsByDate } from "../byDate.ts";
import type { DayDemand } from "../dayDemand.ts";
import { kitsOfFullestRound } from "../rounds/turnaroundMinutes.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { dosingFor } from "./dosing.ts";
import { preparationInUse } from "./productFigures.ts";

/** The unit with its solution dosed for the fullest round of these days, where that is more than one load. */
export function dosedForRounds(unit: UnitFigures, days: readonly DayDemand[]): UnitFigures {
	const { settings } = unit.read;
	const fullestRound = derive(kitsOfFullestRound, {
		days: roundsByDate(days),
		confidence: settings.plan_confidence,
		kitsInService: unit.kitsInService,
	});
	// Without knowing the rounds, the solution is dosed for one load, so that there is something to mix by.
	if (unit.afterEachUse || !fullestRound.outcome.ok) return unit;
	const kits = derive(kitsThroughBath, { kitsInLoad: settings.soak_capacity_kits, fullestRound });
	const dosed = { ...unit, ...dosingFor(unit.read, kits) };
	return { ...dosed, preparationOn: preparationInUse(dosed, unit.productInUse) };
}
