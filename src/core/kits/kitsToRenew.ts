import { MINUTES_PER_DAY } from "../values/clock.ts";
import { type ReadyLife, SPREAD_DAYS } from "./renewalSteps.ts";

/** A kit that is ready, and the day (counted from the plan's first) it became so. */
export interface ReadyKit {
	readonly kit: string;
	readonly readyOn: number;
}

/** A round by the clock, in minutes from the plan's first midnight. */
export interface ClockedRound {
	readonly start: number;
	/** When its kits are ready. */
	readonly ready: number;
}

/**
 * The kits that each round renews although nobody used them, if none is used until then.
 *
 * when_expired: a kit joins the first round after the last day it may be used. in_time:
 * a kit joins when its last day ends before the next round's kits will be ready; and if
 * the two oldest that remain end on the same day, less than two days after that, one of
 * them joins too. A kit renewed is ready anew when its round ends.
 *
 * @param rounds of the plan and the one after it, in order
 * @returns the kits for each round but the last, oldest first
 */
export function kitsToRenew(
	kits: readonly ReadyKit[],
	rounds: readonly ClockedRound[],
	life: ReadyLife,
): string[][] {
	let ready = [...kits].sort(byAge);
	return rounds.slice(0, -1).map(({ start, ready: readyAt }, i) => {
		const next = rounds[i + 1] as ClockedRound;
		const joining = joiningAt(ready, start, next.ready, life);
		ready = [
			...ready.filter((kit) => !joining.includes(kit)),
			...joining.map(({ kit }) => ({ kit, readyOn: Math.floor(readyAt / MINUTES_PER_DAY) })),
		].sort(byAge);
		return joining.map(({ kit }) => kit);
	});
}

function byAge(a: ReadyKit, b: ReadyKit): number {
	return a.readyOn - b.readyOn || (a.kit < b.kit ? -1 : 1);
}

function joiningAt(
	ready: readonly ReadyKit[],
	start: number,
	nextReady: number,
	{ days, renewal }: ReadyLife,
): ReadyKit[] {
	/** The midnight that ends the last day a kit may be used. */
	const endOf = ({ readyOn }: ReadyKit) => (readyOn + days + 1) * MINUTES_PER_DAY;
	if (renewal === "when_expired") return ready.filter((kit) => endOf(kit) <= start);
	const joining = ready.filter((kit) => endOf(kit) < nextReady);
	const [oldest, second] = ready.slice(joining.length);
	const spread =
		oldest !== undefined &&
		second !== undefined &&
		oldest.readyOn === second.readyOn &&
		endOf(oldest) < nextReady + SPREAD_DAYS * MINUTES_PER_DAY;
	return spread ? [...joining, oldest] : joining;
}
