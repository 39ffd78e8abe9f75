import { type Figure, typedFigure } from "../../calculation.ts";
import { memoizeByObject } from "../../memoize.ts";
import { valueIn } from "../../outcome.ts";
import { givenFigure } from "../../read/cellFigure.ts";
import type { ReadTables, ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { recordsSheet } from "../../sheets/records.ts";
import { usesSheet } from "../../sheets/uses.ts";
import { dayNumber, type IsoDate } from "../../values/date.ts";
import type { DayPart } from "./recorded.ts";

/**
 * Kits used on each day of which something is written down: the register's own number, and
 * where it is blank the uses of that day, line by line. A kit that was opened counts as the
 * register counts it: it goes through a round like one used on a baby. A need that found none
 * ready is no kit used; it does say that the day was recorded.
 *
 * A day that is not in the map is not recorded.
 */
export const kitsUsedByDay = memoizeByObject(
	({ records, uses }: ReadTables): ReadonlyMap<IsoDate, readonly DayPart[]> => {
		const byDay = new Map<IsoDate, DayPart[]>();
		const inRegister = new Set<IsoDate>();
		for (const row of records.rows) {
			const figure = givenFigure(recordsSheet, row, "kits_used");
			const day = row.value.date;
			if (!figure) continue;
			inRegister.add(day);
			byDay.set(day, [{ day, name: day, figure }]);
		}
		for (const { line, value } of uses.rows) {
			const day = value.at.date;
			if (inRegister.has(day)) continue;
			const parts = byDay.get(day) ?? [];
			byDay.set(day, parts);
			if (value.what === "none_ready") continue;
			const label = value.what === "used" ? say`A kit used` : say`A kit opened`;
			parts.push({ day, name: say`line ${line}`, figure: oneKit(label, line) });
		}
		return byDay;
	},
);

const oneKit = (label: string, line: number): Figure =>
	typedFigure(label, "", 1, { file: usesSheet.file, line, column: "" });

/**
 * Kits used on each of some days of which it is known: as written down, and none on a day
 * without a line while uses are kept. Compared with a plan, or with births, the days that
 * have a line would be those on which a kit was used, and their use more than there was.
 */
export function kitsUsedOn(
	{ tables, settings }: ReadWorkbook,
	days: readonly IsoDate[],
): ReadonlyMap<IsoDate, number> {
	const written = kitsUsedByDay(tables);
	const isKept = usesAreKept(tables, valueIn(settings.ready_life_days) ?? 0);
	return new Map(
		days.flatMap((day): [IsoDate, number][] => {
			const parts = written.get(day) ?? (isKept(day) ? [] : undefined);
			if (!parts) return [];
			return [[day, parts.reduce((sum, { figure }) => sum + (valueIn(figure) ?? 0), 0)]];
		}),
	);
}

/**
 * Whether uses are written down as they happen around a day, so that a day without a line
 * is a day without a use: something was written down of uses or rounds within the days that
 * a kit keeps before it, and something after it too. The register asks by the same days.
 *
 * @param lifeDays days that a disinfected kit stays ready
 */
export function usesAreKept(
	{ uses, roundsDone }: ReadTables,
	lifeDays: number,
): (day: IsoDate) => boolean {
	const dates = new Set(uses.rows.map(({ value }) => value.at.date));
	if (dates.size === 0) return () => false;
	for (const { value } of roundsDone.rows) dates.add(value.date);
	const written = [...dates].sort();
	const last = written.at(-1) as IsoDate;
	return (day) => {
		const before = day > last ? undefined : latestUpTo(written, day);
		return before !== undefined && numberOf(day) - numberOf(before) <= lifeDays;
	};
}

function numberOf(day: IsoDate): number {
	return dayNumber(day) as number;
}

/** The latest of some days in order that is not after `day`. */
function latestUpTo(sorted: readonly IsoDate[], day: IsoDate): IsoDate | undefined {
	let [from, to] = [0, sorted.length];
	while (from < to) {
		const middle = (from + to) >> 1;
		const there = sorted[middle] as IsoDate;
		if (there <= day) from = middle + 1;
		else to = middle;
	}
	return sorted[from - 1];
}
