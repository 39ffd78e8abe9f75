import { changeOfLevel } from "../../forecast/changeOfLevel.ts";
import { factorsFrom } from "../../forecast/weekdayFactors.ts";
import { valueIn } from "../../outcome.ts";
import { addDays, type IsoDate } from "../../values/date.ts";
import type { RegisterFigures } from "./registerFigures.ts";

/** A lasting change of the level of births in the register. */
export interface LevelChange {
	/** About the day on which it began. */
	readonly since: IsoDate;
	/** Births a day before and after. */
	readonly before: number;
	readonly after: number;
	/** Days recorded before and after. */
	readonly daysBefore: number;
	readonly daysAfter: number;
}

/** The last lasting change in the days that the forecast learns from; undefined where there is none, or no forecast from them. */
export function levelChange({ register, forecast }: RegisterFigures): LevelChange | undefined {
	const days = register && valueIn(register);
	const learned = forecast && valueIn(forecast);
	if (!days || learned?.ledBy !== "register") return undefined;
	const { firstDay, counts } = days;
	const factors = factorsFrom(firstDay, learned.factors);
	const change = changeOfLevel(counts, factors, learned.daySpread);
	if (!change) return undefined;
	const recorded = (list: typeof counts) => list.filter((count) => count !== null).length;
	return {
		since: addDays(firstDay, change.beganOn),
		before: change.before,
		after: change.after,
		daysBefore: recorded(counts.slice(0, change.beganOn)),
		daysAfter: recorded(counts.slice(change.beganOn)),
	};
}
