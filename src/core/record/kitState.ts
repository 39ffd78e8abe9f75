import type { Finding } from "../kits/checkResult.ts";
import { addDays, type IsoDate } from "../values/date.ts";
import type { LocalTime } from "../values/dateTime.ts";

/** How a kit stands, as the files say it. */
export type KitStateName = "ready" | "to_reprocess" | "incomplete" | "in_repair" | "out_of_service";

/** A check of one kit that was finished. */
export interface KitCheck {
	readonly at: LocalTime;
	readonly what: "checked";
	readonly found: Finding;
	/** "stands_for_round": a check of the time before rounds were recorded, when nothing else said that one had ended. */
	readonly purpose: "after_round" | "before_use" | "stands_for_round";
}

/** Something that happened to one kit. */
export type KitEvent =
	| KitCheck
	| {
			readonly at: LocalTime;
			/**
			 * "reprocessed": it went through a round, and `at` is when the round ended. "listed_ready":
			 * the register's own word that it was ready on a day, which holds from the end of that day.
			 */
			readonly what: "used" | "opened" | "reprocessed" | "listed_ready";
	  };

/** Why a kit is not ready. */
export type Reason =
	| "used"
	| "opened"
	| "life_over"
	| "not_tested"
	| "not_clean"
	| "nothing_known"
	| "found_incomplete"
	| "test_failed"
	| "taken_out";

export interface KitState {
	readonly name: KitStateName;
	/** Absent where the kit is ready. */
	readonly reason?: Reason;
	/** Day of the end of the round that disinfected it; absent where nothing says so or hands have opened it since. */
	readonly readySince?: IsoDate;
	/** Last day it may be used; absent where nobody knows how long it keeps. */
	readonly readyUntil?: IsoDate;
	/** The check that found it incomplete or to be repaired, until a later round's own check has passed: the kit is not in service. */
	readonly outBy?: KitCheck;
}

/** At equal times the unsafe one wins: it comes last. */
const ORDER = { listed_ready: 0, reprocessed: 1, used: 4, opened: 4 } as const;
const FAILED_LAST = { passed: 2, not_clean: 5, incomplete: 6, in_repair: 7 } as const;

function place(event: KitEvent): number {
	return event.what === "checked" ? FAILED_LAST[event.found] : ORDER[event.what];
}

/** Events in the order of time, at equal times the unsafe one last. */
export function inOrder<E extends KitEvent>(events: readonly E[]): E[] {
	return [...events].sort((a, b) => inTime(a.at, b.at) || place(a) - place(b));
}

/** Below 0 where one moment comes before another, above where it comes after. */
export function inTime(one: LocalTime, other: LocalTime): number {
	if (one.date !== other.date) return one.date < other.date ? -1 : 1;
	return one.minutes - other.minutes;
}

/**
 * The state of a kit by the record, on a day.
 *
 * Its disinfected life starts at the end of the round that did it, and a check never makes
 * it longer. A kit that was used or opened goes back to a round; after a round it waits for
 * the check of that round; a check that fails takes it out until a later round and that
 * round's own check. A kit that is incomplete or in repair stays so, used or opened, until it
 * has gone through a round, and is out of service until that round's check has passed. The
 * register's own word stands for a round and its check. A state machine over the events in
 * the order of time.
 *
 * @param events up to that day, in any order
 * @param lifeDays days that a disinfected kit may be used after the day of its round; undefined
 *   where that is not known: then "ready" says only that it was, and not until when
 * @example round Monday, its check passed, 7 days → ready until next Monday
 */
export function kitState(
	events: readonly KitEvent[],
	day: IsoDate,
	lifeDays: number | undefined,
): KitState {
	let now: KitState = { name: "to_reprocess", reason: "nothing_known" };
	/** Of a kit that is ready, or only waits for its check. */
	let disinfected = day;
	let outBy: KitCheck | undefined;
	for (const event of inOrder(events)) {
		const { what, at } = event;
		if (what === "listed_ready") {
			disinfected = at.date;
			now = { name: "ready" };
		} else if (what === "reprocessed") {
			disinfected = at.date;
			now = { name: "to_reprocess", reason: "not_tested" };
		} else if (what !== "checked") {
			if (!isSetApart(now)) now = { name: "to_reprocess", reason: what };
		} else if (event.found === "not_clean") {
			if (!isSetApart(now)) now = { name: "to_reprocess", reason: "not_clean" };
		} else if (event.found !== "passed") {
			now = afterFailed(event.found);
			outBy = event;
		} else if (event.purpose === "stands_for_round") {
			disinfected = at.date;
			now = { name: "ready" };
		} else if (event.purpose === "after_round" && now.reason === "not_tested") {
			now = { name: "ready" };
		}
		if (now.name === "ready") outBy = undefined;
	}
	if (now.name === "ready") return aged(disinfected, day, lifeDays);
	return outBy ? { ...now, outBy } : now;
}

function isSetApart({ name }: KitState): boolean {
	return name === "incomplete" || name === "in_repair";
}

function afterFailed(found: "incomplete" | "in_repair"): KitState {
	return found === "incomplete"
		? { name: "incomplete", reason: "found_incomplete" }
		: { name: "in_repair", reason: "test_failed" };
}

function aged(readySince: IsoDate, day: IsoDate, lifeDays: number | undefined): KitState {
	if (lifeDays === undefined) return { name: "ready", readySince };
	const readyUntil = addDays(readySince, Math.floor(lifeDays));
	return readyUntil < day
		? { name: "to_reprocess", reason: "life_over", readySince, readyUntil }
		: { name: "ready", readySince, readyUntil };
}
