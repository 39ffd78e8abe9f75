import { checkResult } from "../../kits/checkResult.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import type { GoodRow } from "../../read/rows.ts";
import type { KitEvent } from "../../record/kitState.ts";
import { marksIn } from "../../record/marksIn.ts";
import { clockAfter, momentAt } from "../../record/momentAfter.ts";
import type { ChecksRow } from "../../sheets/checks.ts";
import type { KitsRow } from "../../sheets/kits.ts";
import type { RoundsDoneRow } from "../../sheets/roundsDone.ts";
import { MINUTES_PER_DAY } from "../../values/clock.ts";
import type { IsoDate } from "../../values/date.ts";
import { piecesByKind } from "./piecesOfKinds.ts";

/** A round of the record with the kits that went through it. */
export interface RoundOfRecord {
	readonly row: GoodRow<RoundsDoneRow>;
	readonly kits: readonly string[];
	/** Marks that are not in the register. */
	readonly unknown: readonly string[];
	/** Minutes from the midnight of its day to its end, which may lie in the next day. */
	readonly endsAt: number;
}

/**
 * Every round of the record.
 *
 * @param minutesOf minutes that a round of so many kits takes, for a round whose end was
 *   not written down; undefined where the steps do not tell: then it ends as it begins
 */
export function roundsOfRecord(
	{ tables }: ReadWorkbook,
	minutesOf: (kits: number) => number | undefined,
): RoundOfRecord[] {
	const known = tables.kits.rows.map(({ value }) => value.kit);
	return tables.roundsDone.rows.map((row) => {
		const { start, ended, kits } = row.value;
		const { marks, unknown } = marksIn(kits, known);
		const planned = minutesOf(marks.length + unknown.length) ?? 0;
		const endsAt = ended === null ? start + planned : clockAfter(start, ended);
		return { row, kits: marks, unknown, endsAt };
	});
}

/** What happened to a kit, up to a day. */
export interface KitRecord {
	readonly events: readonly KitEvent[];
	/** The latest check that was finished, and what it found. */
	readonly lastCheck:
		| { readonly row: GoodRow<ChecksRow>; readonly missing: number; readonly reason: string }
		| undefined;
}

/** Everything that the files say of one kit, up to and with a day. */
export function kitRecord(
	{ tables }: ReadWorkbook,
	rounds: readonly RoundOfRecord[],
	{ kit, kind, ready_since: readySince }: KitsRow,
	lastDay: IsoDate,
): KitRecord {
	const mine = rounds.filter(({ row, kits }) => kits.includes(kit) && row.value.date <= lastDay);
	const events: KitEvent[] = mine.map(({ row, endsAt }) => ({
		what: "reprocessed",
		at: momentAt(row.value.date, endsAt),
	}));
	if (readySince !== null)
		events.push({ what: "listed_ready", at: { date: readySince, minutes: MINUTES_PER_DAY } });
	for (const { value } of tables.uses.rows)
		if (value.kit.trim() === kit && value.what !== "none_ready" && value.at.date <= lastDay)
			events.push({ what: value.what, at: value.at });
	const listed = piecesByKind(tables.kinds).get(kind) ?? 0;
	let lastCheck: KitRecord["lastCheck"];
	for (const row of tables.checks.rows) {
		const { checked_at: at, purpose } = row.value;
		if (row.value.kit !== kit || at.date > lastDay) continue;
		const checked = checkResult(row.value, listed);
		if (!checked) continue;
		// A round written down for that day takes the place of the check that stood for it.
		const standsForRound =
			purpose === "in_place_of_round" && !mine.some((round) => round.row.value.date === at.date);
		events.push({
			what: "checked",
			at,
			found: checked.found,
			purpose: standsForRound
				? "stands_for_round"
				: purpose === "before_use"
					? "before_use"
					: "after_round",
		});
		if (!lastCheck || !isBefore(row.value.checked_at, lastCheck.row.value.checked_at))
			lastCheck = { row, missing: checked.missing, reason: checked.reason };
	}
	return { events, lastCheck };
}

function isBefore(one: ChecksRow["checked_at"], other: ChecksRow["checked_at"]): boolean {
	return one.date < other.date || (one.date === other.date && one.minutes < other.minutes);
}
