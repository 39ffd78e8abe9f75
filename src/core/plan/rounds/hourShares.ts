import {
	defaultFigure,
	derive,
	type Figure,
	refusedFigure,
	typedFigure,
} from "../../calculation.ts";
import { memoizeByObject } from "../../memoize.ts";
import { firstReasons } from "../../outcome.ts";
import { problem } from "../../problem.ts";
import type { ReadTable } from "../../read/goodRow.ts";
import { flatDay, type HourShares } from "../../rounds/dayClock.ts";
import { sharesFromTimes } from "../../rounds/sharesFromTimes.ts";
import { say } from "../../say.ts";
import { type HoursRow, hoursSheet } from "../../sheets/hours.ts";
import { type RecordsRow, recordsSheet } from "../../sheets/records.ts";

const label = say`Births through the day`;
const unit = say`share of each hour`;
const place = { file: hoursSheet.file, line: null, column: "share" };

/**
 * Shares of the 24 hours: the unit's own weights, else learned from the times in the
 * register, else flat. An hour left out of the weights weighs 0.
 *
 * The same object after an edit elsewhere: by it the rounds of days are found again.
 */
export const hourShares = memoizeByObject(
	(table: ReadTable<HoursRow>, records: ReadTable<RecordsRow>): Figure<HourShares> => {
		const bad = table.badRows.flatMap((row) => row.problems);
		if (bad.length > 0) return refusedFigure(label, unit, place, ...firstReasons(bad));
		if (table.rows.length === 0) return fromRegister(records);
		const weights = Array.from(flatDay, (_, hour) =>
			table.rows.reduce((sum, row) => sum + (row.value.hour === hour ? row.value.share : 0), 0),
		);
		const total = weights.reduce((sum, weight) => sum + weight, 0);
		if (total > 0)
			return typedFigure(
				label,
				unit,
				weights.map((w) => w / total),
				place,
			);
		return refusedFigure(
			label,
			unit,
			place,
			problem(place, {
				code: "no-weight",
				received: say`weights that are all 0`,
				allowed: say`at least one weight above 0`,
				message: say`The weights of the hours are all 0; give at least one, or leave the sheet empty for a flat day.`,
			}),
		);
	},
);

function fromRegister(records: ReadTable<RecordsRow>): Figure<HourShares> {
	const times = records.rows.flatMap(({ value }) => value.times);
	if (times.length === 0) return defaultFigure(label, unit, flatDay, place);
	const recorded = typedFigure(say`Times of births`, say`h:min`, times, {
		file: recordsSheet.file,
		line: null,
		column: "times",
	});
	return derive(sharesFromTimes, { times: recorded });
}
