import type { Figure } from "../../calculation.ts";
import { valueIn } from "../../outcome.ts";
import { kitMarks } from "../../read/kitMarks.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { countsAt } from "../../record/countsAt.ts";
import { marksReader } from "../../record/marksReader.ts";
import { soakMinutes } from "../../record/soakMinutes.ts";
import type { IsoDate } from "../../values/date.ts";
import { inOrder } from "../../values/inOrder.ts";
import { piecesByKind } from "../kits/piecesOfKinds.ts";

/** A round of which something was less than the unit asks for. */
export interface RoundBelow {
	readonly date: IsoDate;
	readonly start: number;
	/** What was written down. */
	readonly found: number;
}

/** The rounds done on some days. */
export interface RoundsOverDays {
	readonly rounds: number;
	readonly descalings: number;
	/** Kits that went through them, each as often as it did. */
	readonly kits: number;
	/** Their pieces; undefined where of one of them nobody knows how many it has. */
	readonly pieces: number | undefined;
	/** Soaks shorter than the unit's shortest, in minutes; undefined where that cannot be read. */
	readonly shortSoaks: readonly RoundBelow[] | undefined;
	/** Readings under the strength of the soak, in % available chlorine; undefined where that cannot be read. */
	readonly weakReadings: readonly RoundBelow[] | undefined;
	/** Days on which a kit waited for a round and none was written down; undefined where no round of these days is written down. */
	readonly leftOut: readonly IsoDate[] | undefined;
}

/** @param days in order, without gaps */
export function roundsOverDays(read: ReadWorkbook, days: readonly IsoDate[]): RoundsOverDays {
	const { tables, settings } = read;
	const marksIn = marksReader(kitMarks(tables.kits));
	const all = new Set(days);
	const rows = tables.roundsDone.rows.map(({ value }) => value).filter(({ date }) => all.has(date));
	const below = (
		of: (row: (typeof rows)[number]) => number | null | undefined,
		setting: Figure,
	): RoundBelow[] | undefined => {
		const least = valueIn(setting);
		if (least === undefined) return undefined;
		return rows.flatMap((row) => {
			const found = of(row);
			const isBelow = typeof found === "number" && found < least;
			return isBelow ? [{ date: row.date, start: row.start, found }] : [];
		});
	};
	const kits = rows.map((row) => marksIn(row.kits));
	return {
		rounds: rows.length,
		descalings: rows.filter(({ descaled }) => descaled === "yes").length,
		kits: kits.reduce((sum, { marks, unknown }) => sum + marks.length + unknown.length, 0),
		pieces: piecesThrough(read, kits),
		shortSoaks: below(soakMinutes, settings.soak_minutes),
		weakReadings: below((row) => row.strength_reading_pct, settings.target_strength_pct),
		leftOut: rows.length === 0 ? undefined : leftOut(read, days, marksIn),
	};
}

/** Pieces of all kits that went through, by the list of their kind. */
function piecesThrough(
	{ tables }: ReadWorkbook,
	kits: readonly ReturnType<ReturnType<typeof marksReader>>[],
): number | undefined {
	const listed = piecesByKind(tables.kinds);
	const pieces = new Map(tables.kits.rows.map(({ value }) => [value.kit, listed.get(value.kind)]));
	let sum = 0;
	for (const { marks, unknown } of kits) {
		if (unknown.length > 0) return undefined;
		for (const mark of marks) {
			const ofKit = pieces.get(mark);
			if (ofKit === undefined || tables.kinds.badRows.length > 0) return undefined;
			sum += ofKit;
		}
	}
	return sum;
}

/**
 * Days on which a kit had been used or opened before the last round of the day was to
 * start, had not gone through a round since, and no round was written down. Only up to the
 * last day of which anything is written down.
 */
function leftOut(
	{ tables, settings }: ReadWorkbook,
	days: readonly IsoDate[],
	marksIn: ReturnType<typeof marksReader>,
): IsoDate[] {
	if (valueIn(settings.reprocessing) === "after_each_use") return [];
	const starts = tables.rounds.rows.map(({ value }) => value.start);
	const lastStart = Math.max(...starts);
	if (starts.length === 0) return [];
	const roundDays = new Set(tables.roundsDone.rows.map(({ value }) => value.date));
	const happened = [
		...tables.uses.rows.flatMap(({ value: { at, kit, what } }) =>
			what === "none_ready" ? [] : [{ ...countsAt(at, false), kits: [kit], waits: true }],
		),
		...tables.roundsDone.rows.map(({ value }) => ({
			date: value.date,
			minutes: value.start,
			kits: marksIn(value.kits).marks,
			waits: false,
		})),
	].sort((a, b) => inOrder(a.date, b.date) || a.minutes - b.minutes);
	const lastDay = happened.at(-1)?.date ?? "";
	const waiting = new Set<string>();
	const found: IsoDate[] = [];
	let next = 0;
	for (const day of days) {
		for (let event = happened[next]; event; event = happened[++next]) {
			if (event.date > day || (event.date === day && event.minutes >= lastStart)) break;
			for (const kit of event.kits)
				if (event.waits) waiting.add(kit);
				else waiting.delete(kit);
		}
		if (day <= lastDay && waiting.size > 0 && !roundDays.has(day)) found.push(day);
	}
	return found;
}
