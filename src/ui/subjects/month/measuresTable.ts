import type { Figure } from "../../../core/calculation.ts";
import { valueIn } from "../../../core/outcome.ts";
import { comparedDays } from "../../../core/plan/record/comparedDays.ts";
import { doneOnDays } from "../../../core/plan/record/doneOnDays.ts";
import { kitsUsedByDay } from "../../../core/plan/record/kitsUsedByDay.ts";
import { spanTable } from "../../../core/plan/record/monthTable.ts";
import type { ReadWorkbook } from "../../../core/read/readWorkbook.ts";
import { rounded } from "../../../core/rounded.ts";
import { say } from "../../../core/say.ts";
import { type MonthMeasure, monthMeasures, monthSheet } from "../../../core/sheets/month.ts";
import { type Measure, measures } from "../../../core/sheets/planMeasures.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { counted } from "../../format/counted.ts";
import { DASH, shownCell } from "../../format/shownFigure.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { paperTable } from "../../print/paperTable.ts";

const { columns } = monthSheet;

/** What a row is of. */
const words: Readonly<Record<MonthMeasure, string>> = {
	births: say`Births`,
	kits_used: say`Kits used`,
	needs_none_ready: say`Times no kit was ready when needed`,
	rounds: say`Rounds`,
	kits_failed: say`Kits that failed their check`,
	descalings: say`Descalings`,
	solution_litres: say`Chlorine solution, L`,
	boiled_litres: say`Boiled water, L`,
};

/** Each measure: what the plans said, what was done, and on the days of which both are known, whether it was enough. */
export function measuresTable(read: ReadWorkbook, days: readonly IsoDate[]): HTMLTableElement {
	const done = doneOnDays(read, days);
	const rows = spanTable(read, days).rows.slice(0, monthMeasures.length);
	return paperTable(
		say`What was planned and what was done`,
		[
			{ label: say`Of` },
			{ label: say`Average`, numeric: true },
			{ label: say`Prepare for`, numeric: true },
			{ label: say`Done`, numeric: true },
			{ label: say`Recorded` },
			{ label: say`On the days both planned and recorded` },
		],
		[
			{
				rows: monthMeasures.map((measure, at) => {
					const row = rows[at] as (typeof rows)[number];
					return [
						words[measure],
						shown("planned_expected", row.planned_expected),
						shown("planned_set_aside", row.planned_set_aside),
						shown("done", row.done),
						recordedWords(read, measure, shownCell(columns.note, row.note), done[measure]),
						bothWords(read, measure, days, done[measure]),
					];
				}),
			},
		],
	);
}

/** On how many days something was written down; of kits used also on how many more it is known that there was none. */
function recordedWords(
	{ tables }: ReadWorkbook,
	measure: MonthMeasure,
	note: string,
	doneOn: ReadonlyMap<IsoDate, number>,
): string {
	if (measure !== "kits_used") return note;
	const written = kitsUsedByDay(tables);
	const more = [...doneOn.keys()].filter((day) => !written.has(day)).length;
	return more === 0 ? note : say`${note}; other days without a kit used: ${more}`;
}

/** A figure as its column rounds it, without a decimal that says nothing: most of these are counts. */
function shown(
	column: "planned_expected" | "planned_set_aside" | "done",
	figure: Figure<number | null>,
): string {
	const value = valueIn(figure);
	if (typeof value !== "number") return DASH;
	const shortened = rounded(columns[column], value);
	// A little is never shown as nothing.
	return shortened === 0 && value > 0 ? shownCell(columns[column], figure) : shownPlain(shortened);
}

/** Sums of different days cannot be compared; these are of the same days. */
function bothWords(
	{ tables }: ReadWorkbook,
	measure: MonthMeasure,
	days: readonly IsoDate[],
	doneOn: ReadonlyMap<IsoDate, number>,
): string {
	if (!isPlanned(measure)) return DASH;
	const both = comparedDays(tables, measure, days, doneOn);
	if (both.length === 0) return say`no day is both`;
	const sum = (of: (day: (typeof both)[number]) => number) =>
		shownPlain(Number(both.reduce((all, day) => all + of(day), 0).toFixed(1)));
	const compared = say`${counted(both.length, "day")}: average of the plan ${sum((day) => day.expected ?? 0)}, done ${sum((day) => day.done)}`;
	const judged = both.filter(({ setAside }) => setAside !== null);
	if (judged.length === 0) return compared;
	const enough = judged.filter(({ done, setAside }) => done <= (setAside ?? 0)).length;
	return say`${compared}; what was prepared for was enough on ${enough} of ${judged.length}`;
}

function isPlanned(measure: MonthMeasure): measure is MonthMeasure & Measure {
	return (measures as readonly string[]).includes(measure);
}
