import { answer, type Outcome } from "../outcome.ts";
import { readSettings } from "../read/readSettings.ts";
import { textsOf } from "../read/textsOf.ts";
import { birthsSheet } from "../sheets/births.ts";
import type { PlannedDay } from "../sheets/plannedDay.ts";
import { unitSheet } from "../sheets/unit.ts";
import { addDays, date, type IsoDate } from "../values/date.ts";
import { type Workbook, withTable } from "../workbook.ts";
import { withPlansKept } from "./withPlansKept.ts";

/** A workbook moved on to its next period, and what that took out. */
export interface MovedOn {
	readonly workbook: Workbook;
	/** First and last day of the next period. */
	readonly first: IsoDate;
	readonly last: IsoDate;
	/** What stood beside days that are past, as typed. */
	readonly past: readonly PastDay[];
}

interface PastDay {
	readonly date: IsoDate;
	readonly births: string;
	readonly note: string;
}

/**
 * The workbook with the plan's first day moved on by the days of the plan.
 *
 * Rows of births.csv for days before the new first day go: they were expectations,
 * and what really happened belongs in the register. What was planned for those days
 * is kept, to be compared later. Days to come, rows whose date cannot be understood, and
 * every other sheet, the record of the days past too, stay as they are.
 *
 * @param planned what the plan of this workbook says of its days
 */
export function movedOn(workbook: Workbook, planned: readonly PlannedDay[]): Outcome<MovedOn> {
	const { plan_start: start, plan_days: days } = readSettings(
		workbook.tables[unitSheet.file],
	).settings;
	if (!start.outcome.ok) return start.outcome;
	if (!days.outcome.ok) return days.outcome;
	const first = addDays(start.outcome.value, days.outcome.value);
	const births = textsOf(workbook, birthsSheet);
	const dayOf = (row: readonly string[]) => {
		const read = date().schema.safeParse(births.cell(row, "date"));
		return read.success ? read.data : undefined;
	};
	const isPast = (row: readonly string[]) => (dayOf(row) ?? first) < first;
	const past = births.rows
		.filter(isPast)
		.map((row) => ({
			date: dayOf(row) as IsoDate,
			births: births.cell(row, "births").trim(),
			note: births.cell(row, "note").trim(),
		}))
		.filter((day) => day.births !== "" || day.note !== "");
	const rows = births.rows.filter((row) => !isPast(row));
	return answer({
		workbook: withStart(
			withTable(
				withPlansKept(
					workbook,
					planned.filter((day) => day.date < first),
				),
				birthsSheet.file,
				{ header: births.header, rows },
			),
			first,
		),
		first,
		last: addDays(first, days.outcome.value - 1),
		past,
	});
}

/** The first day stands in the row where it was read from: without one there would be no answer above. */
function withStart(workbook: Workbook, first: IsoDate): Workbook {
	const unit = textsOf(workbook, unitSheet);
	const rows = unit.rows.map((row) =>
		unit.cell(row, "key").trim() === "plan_start" ? unit.row(row, { value: first }) : row,
	);
	return withTable(workbook, unitSheet.file, { header: unit.header, rows });
}
