import { type Figure, refusedFigure, typedFigure } from "../calculation.ts";
import type { ReadTable } from "../read/readTable.ts";
import { type BirthsRow, birthsSheet } from "../sheets/births.ts";
import type { IsoDate } from "../values/date.ts";

const { label, unit } = birthsSheet.columns.births;

/**
 * Mean births on a day: the unit's own figure for it, else births a day from the settings.
 *
 * A row that cannot be read leaves its day without a figure; where even the date
 * cannot be read no day is touched, and the problem stands in the list.
 */
export function birthsOfDay(
	date: IsoDate,
	table: ReadTable<BirthsRow>,
	birthsPerDay: Figure<number | null>,
): Figure<number> {
	const place = { file: birthsSheet.file, line: null, column: "births" };
	const refused = table.badRows.filter((row) => row.value.date === date);
	if (refused.length > 0)
		return refusedFigure(label, unit, place, ...refused.flatMap((row) => row.problems));
	const row = table.rows.find((r) => r.value.date === date);
	if (row && row.value.births !== null)
		return typedFigure(label, unit, row.value.births, { ...place, line: row.line });
	return birthsPerDay as Figure<number>;
}
