import { derive, type Figure, nameFigure } from "../../calculation.ts";
import type { ComputedRow } from "../../computedTable.ts";
import { type FireOfLoad, fireOfLoad } from "../../methods/fireOfLoad.ts";
import { partOf } from "../../partOf.ts";
import { say } from "../../say.ts";
import type { boilingSheet } from "../../sheets/boiling.ts";
import { writeClock } from "../../values/clock.ts";
import type { IsoDate } from "../../values/date.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { fireCells, fireOfSchedule } from "./fireCells.ts";
import type { FiresOfPlan, PiecesOnFire } from "./firesOfPlan.ts";

const litres = partOf<FireOfLoad, "litres">(fireOfLoad, "litres", say`Water needed`, "L");
const start = partOf<FireOfLoad, "startLitres">(fireOfLoad, "startLitres", say`Start with`, "L");
const heating = partOf<FireOfLoad, "heatMinutes">(fireOfLoad, "heatMinutes", say`Heating`, "min");
const hold = partOf<FireOfLoad, "holdMinutes">(
	fireOfLoad,
	"holdMinutes",
	say`Kept at the boil`,
	"min",
);

/**
 * The fire under a load of pieces. Its round may not run, and then it is not lit.
 *
 * @param lit which fire of the schedule it is; null where it has none
 */
export function piecesRow(
	{ read: { settings } }: UnitFigures,
	{ firstDay: first, stove, schedule }: FiresOfPlan,
	{ round, method, fire: ofLoad, need }: PiecesOnFire,
	lit: number | null,
): ComputedRow<typeof boilingSheet> {
	const at = nameFigure(say`Which fire`, lit);
	const placed = derive(fireOfSchedule, { schedule, at });
	// A load whose steps or pot are not known waits for them, not for a stove.
	const fire = need.outcome.ok ? placed : { ...placed, outcome: need.outcome };
	const whole = ofLoad.fire;
	return {
		date: nameFigure(say`Date`, round.date),
		round: nameFigure(say`Round`, round.round.value.label || writeClock(round.round.value.start)),
		litres: derive(litres, { whole }),
		batches: nameFigure(say`Batches`, 1),
		light_by: derive(fireCells.piecesLightBy, {
			fire,
			firstDay: nameFigure(say`First day of the plan`, first as IsoDate),
		}),
		hold_minutes: derive(hold, { whole }),
		boiling_point_c: stove.boilingC,
		heat_minutes: derive(heating, { whole }),
		cool_minutes: nameFigure(say`Cooling`, 0),
		fuel: settings.fuel as Figure<string>,
		fuel_quantity: ofLoad.fuel,
		fuel_measure: nameFigure(say`Measured in`, ofLoad.fuelMeasure),
		start_litres: derive(start, { whole }),
		cool_by: nameFigure(say`Cool by`, ""),
		stove: derive(fireCells.stove, { whole: fire }),
		pots: derive(fireCells.pots, { fire }),
		only_if: nameFigure(say`Only if`, say`the round runs`),
		pieces: nameFigure(say`Pieces on the fire`, method),
	};
}
