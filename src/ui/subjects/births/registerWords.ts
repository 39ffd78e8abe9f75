import { FEWEST_DAYS } from "../../../core/forecast/forecast.ts";
import { valueIn } from "../../../core/outcome.ts";
import { readTable } from "../../../core/read/readTable.ts";
import { say } from "../../../core/say.ts";
import { birthsSheet } from "../../../core/sheets/births.ts";
import { counted } from "../../format/counted.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownNumber } from "../../format/shownNumber.ts";
import { daysOf } from "../../state/daysOf.ts";
import type { State } from "../../state/store.ts";
import { daysToCome } from "./daysToCome.ts";
import { forecastHeadline } from "./forecastWords.ts";
import { registerOf } from "./registerOf.ts";

/** How much of the past is on record, in one line. */
export function recordsHeadline(state: State): string | undefined {
	const register = registerOf(state)?.figures.register;
	const days = register && valueIn(register);
	if (!days) return say`No births recorded yet; a forecast needs ${FEWEST_DAYS} days`;
	const recorded = days.counts.filter((count) => count !== null);
	const missing = days.counts.length - recorded.length;
	const births = recorded.reduce((sum, count) => sum + count, 0);
	const gaps = missing === 0 ? say`no day missing` : say`${counted(missing, "day")} missing`;
	return say`${counted(recorded.length, "day")} recorded since ${shownDay(days.firstDay)}, ${gaps}: ${shownNumber(births / recorded.length, 1)} births a day`;
}

/** Whose figures the plan stands on, in one line. */
export function birthsHeadline(state: State): string {
	const planned = daysOf(state);
	const table = readTable(birthsSheet, state.workbook.tables[birthsSheet.file]);
	const own = new Set(
		table.rows.filter(({ value }) => value.births !== null).map(({ value }) => value.date),
	);
	const count = planned.filter((day) => own.has(day)).length;
	const sources = new Set(daysToCome(state).map(({ source }) => source));
	const rest = sources.has("register")
		? say`the forecast from the register`
		: sources.has("moved")
			? say`births a day from the settings, moved by the register`
			: say`births a day from the settings`;
	const all = counted(planned.length, "day");
	if (count === 0) return say`No figure of your own; every day takes ${rest}`;
	if (count === planned.length) return say`Every day of the plan carries your own figure`;
	return count === 1
		? say`1 of ${all} carries your own figure; the others take ${rest}`
		: say`${count} of ${all} carry your own figure; the others take ${rest}`;
}

export function daysHeadline(state: State): string | undefined {
	return forecastHeadline(daysToCome(state));
}
