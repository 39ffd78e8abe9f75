import { valueIn } from "../../../core/outcome.ts";
import { say } from "../../../core/say.ts";
import { addDays } from "../../../core/values/date.ts";
import { pictureFigure, pictureWidth } from "../../dom/pictureFigure.ts";
import type { State } from "../../state/store.ts";
import { daysToCome } from "./daysToCome.ts";
import type { PastDay } from "./forecastPicture.ts";
import { forecastSentence } from "./forecastWords.ts";
import { type Register, registerOf } from "./registerOf.ts";

const WEEKS_BACK = 8;
/** As many as can be told apart on a phone. */
const WEEKS_BACK_NARROW = 4;
const NARROW_PX = 560;
/** More days than these would be too narrow to tell apart. */
const MOST_DAYS = 60;

/** The picture over the forecast, and the sentence that says what it shows. */
export function forecastView(state: State, room: number): HTMLElement | undefined {
	const days = daysToCome(state).slice(0, MOST_DAYS);
	const register = registerOf(state);
	if (days.length === 0 || !register) return undefined;
	const { forecast } = register.figures;
	const width = pictureWidth(room);
	const weeks = width < NARROW_PX ? WEEKS_BACK_NARROW : WEEKS_BACK;
	return pictureFigure(
		({ forecastPicture }) => forecastPicture(pastDays(register, weeks), days, width),
		say`Births of the last weeks as dots, and the days of the plan with the range of each; the table has the numbers.`,
		forecastSentence(days, forecast && valueIn(forecast)),
	);
}

/** Recorded days of the last weeks before the plan. */
export function pastDays({ read, firstDay }: Register, weeks: number): PastDay[] {
	const since = addDays(firstDay, -7 * weeks);
	return read.tables.records.rows.flatMap(({ value: { date, births } }) =>
		births !== null && date >= since && date < firstDay ? [{ date, births }] : [],
	);
}
