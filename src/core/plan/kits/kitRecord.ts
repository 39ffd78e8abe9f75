import { Grouped } from "../../grouped.ts";
import { checkResult } from "../../kits/checkResult.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { kitMarks } from "../../read/kitMarks.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { countsAt } from "../../record/countsAt.ts";
import { inTime, type KitCheck, type KitEvent } from "../../record/kitState.ts";
import { marksReader } from "../../record/marksReader.ts";
import { clockAfter, momentAt } from "../../record/momentAt.ts";
import type { ChecksRow } from "../../sheets/checks.ts";
import type { KitsRow } from "../../sheets/kits.ts";
import type { RoundsDoneRow } from "../../sheets/roundsDone.ts";
import type { UsesRow } from "../../sheets/uses.ts";
import { MINUTES_PER_DAY } from "../../values/clock.ts";
import type { IsoDate } from "../../values/date.ts";
import { piecesToCheck } from "./piecesOfKinds.ts";
import { type RoundSpan, roundsOverForKit } from "./roundsOverForKit.ts";

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
	const marksIn = marksReader(kitMarks(tables.kits));
	return tables.roundsDone.rows.map((row) => {
		const { start, ended, kits } = row.value;
		const { marks, unknown } = marksIn(kits);
		const planned = minutesOf(marks.length + unknown.length) ?? 0;
		const endsAt = ended === null ? start + planned : clockAfter(start, ended);
		return { row, kits: marks, unknown, endsAt };
	});
}

/** A check that was finished, as it stands in its file. */
export interface FinishedCheck {
	readonly event: KitCheck;
	readonly row: GoodRow<ChecksRow>;
	/** Pieces short of the kind's list. */
	readonly missing: number;
	/** What is wrong, in words; "" where it passed. */
	readonly reason: string;
}

/** What happened to a kit, up to a day. */
export interface KitRecord {
	readonly events: readonly KitEvent[];
	/** Those of the events that are checks, as they are written. */
	readonly checks: readonly FinishedCheck[];
	/** The latest of the checks. */
	readonly lastCheck: FinishedCheck | undefined;
}

/**
 * Everything that the files say of each kit of the register, up to and with a day. Each
 * file is gone through once, however many kits there are.
 *
 * @param minutesAway from the start of a round until the kits of a kind that it sends away are back; 0 where it sends none,
 *   undefined where nobody can read it: none of its kits is then known to be back
 */
export function kitRecords(
	{ tables }: ReadWorkbook,
	rounds: readonly RoundOfRecord[],
	lastDay: IsoDate,
	minutesAway: (kind: string) => number | undefined,
): (kit: KitsRow) => KitRecord {
	const roundsOf = new Grouped<string, RoundOfRecord>();
	for (const round of rounds)
		if (round.row.value.date <= lastDay) for (const kit of round.kits) roundsOf.add(kit, round);
	const usesOf = new Grouped<string, UsesRow>();
	for (const { value } of tables.uses.rows)
		if (value.at.date <= lastDay) usesOf.add(value.kit, value);
	const checksOf = new Grouped<string, GoodRow<ChecksRow>>();
	for (const row of tables.checks.rows)
		if (row.value.checked_at.date <= lastDay) checksOf.add(row.value.kit, row);
	const listed = piecesToCheck(tables.kinds);
	const notBack = momentAt(lastDay, MINUTES_PER_DAY);
	return ({ kit, kind, ready_since: readySince }) => {
		const mine = roundsOf.of(kit);
		const away = minutesAway(kind);
		const checks = finishedChecks(checksOf.of(kit), listed(kind), mine);
		const timed = checks.filter(({ row }) => !row.value.checked_at.isDayOnly);
		const uses = usesOf
			.of(kit)
			.flatMap(({ what, at }): KitEvent[] =>
				what === "none_ready" ? [] : [{ what, at: countsAt(at, false) }],
			);
		const spans = mine.map(({ row: { value }, endsAt }): RoundSpan => {
			if (away === undefined) return { from: notBack, until: notBack };
			const back = value.start + away;
			return {
				from: momentAt(value.date, back),
				until: momentAt(value.date, Math.max(endsAt, back)),
			};
		});
		const events: KitEvent[] = [
			...roundsOverForKit(spans, timed.map(eventOf), uses).map(
				(at): KitEvent => ({ what: "reprocessed", at }),
			),
			...uses,
			...checks.map(eventOf),
		];
		// A day still to come says nothing of today, and would hide whatever happens to the kit before it.
		if (readySince !== null && readySince <= lastDay)
			events.push({ what: "listed_ready", at: { date: readySince, minutes: MINUTES_PER_DAY } });
		return { events, checks, lastCheck: latest(checks) };
	};
}

function eventOf({ event }: FinishedCheck): KitCheck {
	return event;
}

/** The finished checks of one kit. */
function finishedChecks(
	checks: readonly GoodRow<ChecksRow>[],
	listed: number | undefined,
	rounds: readonly RoundOfRecord[],
): FinishedCheck[] {
	const roundDays = new Set(rounds.map(({ row }) => row.value.date));
	return checks.flatMap((row): FinishedCheck[] => {
		const { checked_at: written, purpose } = row.value;
		const result = checkResult(row.value, listed);
		if (!result) return [];
		const { found, missing, reason } = result;
		// A round written down for that day takes the place of the check that stood for it.
		const standsForRound = purpose === "in_place_of_round" && !roundDays.has(written.date);
		const event: KitCheck = {
			what: "checked",
			at: countsAt(written, found === "passed"),
			found,
			purpose: standsForRound
				? "stands_for_round"
				: purpose === "before_use"
					? purpose
					: "after_round",
		};
		return [{ event, row, missing, reason }];
	});
}

/** Of checks at one moment, the one that is written last. */
function latest(checks: readonly FinishedCheck[]): FinishedCheck | undefined {
	return checks.reduce<FinishedCheck | undefined>(
		(last, check) => (last && inTime(check.event.at, last.event.at) < 0 ? last : check),
		undefined,
	);
}
