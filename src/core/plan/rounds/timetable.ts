import { type Figure, refusedFigure, typedFigure } from "../../calculation.ts";
import { memoizeByObject } from "../../memoize.ts";
import { problem } from "../../problem.ts";
import type { GoodRow, ReadTable } from "../../read/goodRow.ts";
import { listFigure } from "../../read/listFigure.ts";
import { say } from "../../say.ts";
import { type RoundsRow, roundsSheet } from "../../sheets/rounds.ts";

export interface Timetable {
	/** The rounds of a day in the order of the clock. */
	readonly rounds: Figure<readonly GoodRow<RoundsRow>[]>;
	/** Their starts, in minutes after midnight. */
	readonly starts: Figure<readonly number[]>;
}

const place = { file: roundsSheet.file, line: null, column: "start" };

/**
 * The rounds of a day, earliest first. A unit that works in rounds has at least one.
 *
 * The same object after an edit elsewhere: by it the rounds of days are found again.
 */
export const timetable = memoizeByObject((table: ReadTable<RoundsRow>): Timetable => {
	const rounds = listFigure(say`Rounds of the day`, "", table, (rows) =>
		[...rows].sort((a, b) => a.value.start - b.value.start),
	);
	const label = say`Rounds start at`;
	const unit = say`minutes after midnight`;
	if (!rounds.outcome.ok) return { rounds, starts: { ...rounds, label, unit } as Figure<never> };
	const starts = rounds.outcome.value.map((row) => row.value.start);
	if (starts.length > 0) return { rounds, starts: typedFigure(label, unit, starts, place) };
	const none = problem(place, {
		code: "no-rounds",
		received: say`no rounds`,
		allowed: say`at least one round, or reprocessing after each use`,
		message: say`No round of reprocessing is listed; list at least one start, or choose “after each use” under “When kits are reprocessed”.`,
	});
	return {
		rounds: refusedFigure(label, "", place, none),
		starts: refusedFigure(label, unit, place, none),
	};
});
