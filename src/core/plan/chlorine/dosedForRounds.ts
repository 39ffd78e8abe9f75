import { derive, type Figure } from "../../calculation.ts";
import { kitsOfDaySolution } from "../../chlorine/kitsOfDaySolution.ts";
import { kitsThroughBath } from "../../chlorine/kitsThroughBath.ts";
import { valueIn } from "../../outcome.ts";
import { roundsByDate } from "../byDate.ts";
import type { DayDemand } from "../dayDemand.ts";
import { kitsOfFullestRound } from "../rounds/turnaroundMinutes.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { dosingFor, fullLoad } from "./dosing.ts";

/** The unit with its solution dosed for the kits that one of these days sends through it, where they are more than one load. */
export function dosedForRounds(unit: UnitFigures, days: readonly DayDemand[]): UnitFigures {
	const kitsInUse = kitsThroughOne(unit, days);
	// Without knowing the rounds, the solution is dosed for one load, so that there is something to mix by.
	if (!kitsInUse?.outcome.ok) return unit;
	const kits = derive(kitsThroughBath, { kitsInLoad: fullLoad(unit.read), kitsInUse });
	return { ...unit, ...dosingFor(unit.read, kits) };
}

/** Undefined where each kit has its own. */
function kitsThroughOne(unit: UnitFigures, days: readonly DayDemand[]): Figure | undefined {
	const { settings } = unit.read;
	const of = {
		days: roundsByDate(days),
		confidence: settings.plan_confidence,
		kitsInService: unit.kitsInService,
	};
	if (valueIn(settings.solution_made) === "each_day")
		return derive(kitsOfDaySolution, { ...of, lifeHours: settings.solution_life_hours });
	return unit.afterEachUse ? undefined : derive(kitsOfFullestRound, of);
}
