import { Grouped } from "../../grouped.ts";
import { valueIn } from "../../outcome.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { kitMarks } from "../../read/kitMarks.ts";
import type { ReadTables, ReadWorkbook } from "../../read/readWorkbook.ts";
import { marksReader } from "../../record/marksReader.ts";
import type { KindsRow } from "../../sheets/kinds.ts";
import { addDays, DAYS_PER_WEEK, daysFrom, type IsoDate } from "../../values/date.ts";
import type { RoundOfRecord } from "./kitRecord.ts";

/** How many rounds a piece of one kit has gone through, beside its limit. */
export interface PieceRounds {
	readonly row: GoodRow<KindsRow>;
	readonly kit: string;
	readonly limit: number;
	/** Since its kit's first round on record, or since a spare was put in. */
	readonly rounds: number;
	readonly since: IsoDate;
	readonly isSpare: boolean;
	/** Day on which the limit is reached at the pace of the last weeks; undefined where the kit has not been through a round in them. */
	readonly limitOn: IsoDate | undefined;
	/** Days from ordering a spare to having it; undefined where no item of the store has the piece's name. */
	readonly leadDays: number | undefined;
	/** A new one is to be at hand: the limit is reached, or comes before an order placed next time could arrive. */
	readonly isDue: boolean;
}

/** Rounds of so many days say how fast a piece comes to its limit (common practice, no source). */
const PACE_DAYS = 28;
/** Where rounds have been written down for less, of those days; so many at least, or one round would be one a day. */
const LEAST_PACE_DAYS = DAYS_PER_WEEK;

/**
 * Every piece that has a limit, in every kit in service that a round on record was for, the
 * one that comes to its limit first leading. Rounds before the record are not known and not
 * counted.
 *
 * @param firstDay of the plan: rounds from then on do not count
 */
export function pieceRounds(
	{ tables, settings }: ReadWorkbook,
	rounds: readonly Pick<RoundOfRecord, "row" | "kits">[],
	firstDay: IsoDate,
): PieceRounds[] {
	const limited = new Grouped<string, GoodRow<KindsRow>>();
	for (const row of tables.kinds.rows)
		if (row.value.replace_after_rounds !== null) limited.add(row.value.kind, row);
	const daysOf = new Grouped<string, IsoDate>();
	for (const { row, kits } of rounds)
		if (row.value.date < firstDay) for (const kit of kits) daysOf.add(kit, row.value.date);
	const spareOn = sparesPutIn(tables, firstDay);
	const leadOf = new Map(tables.items.rows.map(({ value }) => [value.item, value.lead_days]));
	const review = valueIn(settings.review_days) ?? 0;
	const begun = rounds.reduce(
		(one, { row }) => Math.max(one, daysFrom(row.value.date, firstDay)),
		0,
	);
	const paceDays = Math.min(PACE_DAYS, Math.max(LEAST_PACE_DAYS, begun));
	const paceFrom = addDays(firstDay, -paceDays);
	return tables.kits.rows
		.filter(({ value }) => value.status !== "out_of_service")
		.flatMap(({ value: { kit, kind } }) => {
			const days = [...daysOf.of(kit)].sort();
			const [first] = days;
			if (first === undefined) return [];
			const recent = days.filter((day) => day >= paceFrom).length;
			return limited.of(kind).map((row): PieceRounds => {
				const { piece, replace_after_rounds: limit } = row.value;
				const spare = spareOn(piece, kit);
				const since = spare ?? first;
				const done = days.filter((day) => day >= since).length;
				const left = Math.max(0, (limit as number) - done);
				const limitOn =
					recent === 0 && left > 0
						? undefined
						: addDays(firstDay, left === 0 ? 0 : Math.floor((left * paceDays) / recent));
				const leadDays = leadOf.get(piece);
				// The soonest there can be: where days are not known, a piece that is due by it is due all the same.
				const lastDay = addDays(firstDay, Math.ceil((leadDays ?? 0) + review));
				return {
					row,
					kit,
					limit: limit as number,
					rounds: done,
					since,
					isSpare: spare !== undefined,
					limitOn,
					leadDays,
					isDue: limitOn !== undefined && limitOn <= lastDay,
				};
			});
		})
		.sort((a, b) => ((a.limitOn ?? "9") < (b.limitOn ?? "9") ? -1 : 1));
}

/** The last day on which a spare of a piece was issued for a kit: its mark stands in the note. */
function sparesPutIn({ journal, kits, kinds }: ReadTables, firstDay: IsoDate) {
	const pieces = new Set(kinds.rows.map(({ value }) => value.piece));
	const marksIn = marksReader(kitMarks(kits));
	const last = new Map<string, IsoDate>();
	for (const { value } of journal.rows) {
		if (value.entry !== "issue" || !pieces.has(value.item) || value.day >= firstDay) continue;
		for (const kit of marksIn(value.note).marks) {
			const key = JSON.stringify([value.item, kit]);
			const before = last.get(key);
			if (before === undefined || before < value.day) last.set(key, value.day);
		}
	}
	return (piece: string, kit: string) => last.get(JSON.stringify([piece, kit]));
}
