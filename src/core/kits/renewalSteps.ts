import { MINUTES_PER_DAY } from "../values/clock.ts";

/** When a kit that nobody used goes through a round again. */
export type Renewal = "when_expired" | "in_time";

export interface ReadyLife {
	/** Whole days a kit may be used after the day it became ready. */
	readonly days: number;
	readonly renewal: Renewal;
}

/** A day like all others: its rounds, and the kits used from the start of each to the next. */
export interface LikeDay {
	/** Starts of the day's rounds, minutes after midnight, earliest first. */
	readonly starts: readonly number[];
	/** Mean uses from each round's start to the next one's, or to midnight after the last. */
	readonly uses: readonly number[];
	/** Mean uses from midnight to the first round. */
	readonly usesAfterMidnight: number;
	/** Minutes from a round's start to its kits being ready, as the plan counts on. */
	readonly plannedMinutes: number;
}

/** Uses, and then what joins the next round although nobody used it. */
export interface RenewalStep {
	/** Mean uses in it. */
	readonly uses: number;
	/** Kits that end by this day join, days from today; NEVER where none does. Not later than `target`. */
	readonly endsBy: number;
	/** One of several oldest kits that end together by this day joins. */
	readonly spreadBy: number;
	/** The day on which the kits of the round end. */
	readonly target: number;
	/** Whether a new day begins before kits join, or after. */
	readonly midnight: "before" | "after" | "none";
	/** Rounds that are followed as one; 1 where left out. */
	readonly rounds?: number;
}

export const NEVER = -1;

/** Whether kits that nobody used may join the round. */
export function renews({ endsBy, spreadBy }: RenewalStep): boolean {
	return endsBy !== NEVER || spreadBy !== NEVER;
}

/** Oldest kits that end together less than this many days after the next round's are ready are spread. */
export const SPREAD_DAYS = 2;

/** The last day, from the day of its start, of the kits of a round. */
function lastDay(start: number, day: LikeDay, life: ReadyLife): number {
	return Math.floor((start + day.plannedMinutes) / MINUTES_PER_DAY) + life.days;
}

/**
 * A day step by step: in_time from round to round; when_expired also from the last round to midnight.
 *
 * @param mostRounds where kits go out of date, more rounds than this are followed together if few kits are used in them
 */
export function renewalSteps(
	day: LikeDay,
	life: ReadyLife,
	mostRounds = MOST_ROUNDS,
): RenewalStep[] {
	const { starts, uses, usesAfterMidnight } = day;
	const last = uses.at(-1) as number;
	const targets = starts.map((start) => lastDay(start, day, life));
	if (life.renewal === "in_time")
		return starts.map((_, i) => ({
			uses: i === 0 ? last + usesAfterMidnight : (uses[i - 1] as number),
			...inTime(day, i),
			target: targets[i] as number,
			midnight: i === 0 ? "before" : "none",
		}));
	const none = { endsBy: NEVER, spreadBy: NEVER, midnight: "none" } as const;
	const rounds = starts.map((_, i) => ({
		...none,
		uses: i === 0 ? usesAfterMidnight : (uses[i - 1] as number),
		target: targets[i] as number,
	}));
	return [
		{ uses: last, endsBy: 0, spreadBy: NEVER, target: targets[0] as number, midnight: "after" },
		...(rounds.length > mostRounds ? rounded(together(rounds, FEW_USES)) : rounds),
	];
}

/** More than most units have. */
const MOST_ROUNDS = 6;
/** So few that hardly any kit is used in two rounds that are followed as one. */
const FEW_USES = 0.1;

/**
 * Steps one after the other as one where none renews any and their kits end on the same day.
 * Where every kit is followed it is the same: a kit that comes back in between ends later
 * than all others, so none of them is used instead. Of the oldest alone, kits renewed are
 * within 1 in 50 of each step by itself if few are used.
 */
export function together(
	steps: readonly RenewalStep[],
	mostUses = Number.POSITIVE_INFINITY,
): RenewalStep[] {
	const all: RenewalStep[] = [];
	for (const step of steps) {
		const before = all.at(-1);
		const uses = (before?.uses ?? 0) + step.uses;
		if (before && areOne(before, step) && uses <= mostUses)
			all[all.length - 1] = { ...before, uses };
		else all.push(step);
	}
	return all;
}

/**
 * Steps one after the other as one where kits join by the same days and end on the same: a
 * little off, as what one round leaves to the next is used before it, not between them.
 */
export function roughly(steps: readonly RenewalStep[]): RenewalStep[] {
	const all: RenewalStep[] = [];
	for (const step of steps) {
		const before = all.at(-1);
		if (before && step.midnight === "none" && joinAlike(before, step))
			all[all.length - 1] = {
				...before,
				uses: before.uses + step.uses,
				rounds: (before.rounds ?? 1) + 1,
			};
		else all.push(step);
	}
	return all;
}

function joinAlike(a: RenewalStep, b: RenewalStep): boolean {
	return a.endsBy === b.endsBy && a.spreadBy === b.spreadBy && a.target === b.target;
}

function areOne(before: RenewalStep, step: RenewalStep): boolean {
	const renewNone = !renews(before) && !renews(step);
	return renewNone && step.midnight === "none" && before.target === step.target;
}

/** Days whose rounds are at other hours differ by rounding only. */
function rounded(steps: readonly RenewalStep[]): RenewalStep[] {
	return steps.map((step) => ({ ...step, uses: Number(step.uses.toPrecision(12)) }));
}

/** Which ends are too early to wait for the round after round i: a kit's day ends at its midnight. */
function inTime({ starts, plannedMinutes }: LikeDay, i: number) {
	const next = starts[i + 1] ?? (starts[0] as number) + MINUTES_PER_DAY;
	const endsBy = Math.ceil((next + plannedMinutes) / MINUTES_PER_DAY) - 2;
	return { endsBy, spreadBy: endsBy + SPREAD_DAYS };
}
