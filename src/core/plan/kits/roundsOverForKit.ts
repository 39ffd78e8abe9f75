import { inTime, type KitCheck, type KitEvent } from "../../record/kitState.ts";
import type { LocalTime } from "../../values/dateTime.ts";

/** From when a kit of a round can be in hand again until the round is over. */
export interface RoundSpan {
	readonly from: LocalTime;
	readonly until: LocalTime;
}

/** At one minute: rounds end, then kits are used, then tested, then rounds begin. */
const PLACES = { until: 0, used: 1, tested: 2, from: 3 } as const;

interface Moment {
	readonly at: LocalTime;
	readonly what: keyof typeof PLACES;
	/** Which of the rounds; -1 for a use or a check. */
	readonly round: number;
}

/**
 * When each round was over for one of its kits: with its end, or with the kit's own check where
 * that was made during the round. The last kits are dried and put away after the first was
 * tested, and an end that nobody wrote down is only the planned one.
 *
 * A check says nothing of a round in which the kit was used or opened before it, nor where the
 * kit stands in two rounds at once: then the round is over with its end, and waits for a check
 * after it. One pass over all of them in the order of time.
 *
 * @param checks finished ones of the kit whose time is written
 * @param uses of the kit
 * @example round 07:00 to 08:35, its check at 08:20 → 08:20
 */
export function roundsOverForKit(
	rounds: readonly RoundSpan[],
	checks: readonly KitCheck[],
	uses: readonly KitEvent[],
): LocalTime[] {
	const over = rounds.map(({ until }) => until);
	/** Those that run, and whether a first check can still be theirs. */
	const running = new Map<number, boolean>();
	for (const { at, what, round } of moments(rounds, checks, uses)) {
		if (what === "from") running.set(round, true);
		else if (what === "until") running.delete(round);
		else {
			for (const [one, canBe] of running) {
				if (what === "tested" && canBe && running.size === 1) over[one] = at;
				running.set(one, false);
			}
		}
	}
	return over;
}

function moments(
	rounds: readonly RoundSpan[],
	checks: readonly KitCheck[],
	uses: readonly KitEvent[],
): Moment[] {
	return [
		...rounds.flatMap(({ from, until }, round): Moment[] =>
			inTime(from, until) < 0
				? [
						{ at: from, what: "from", round },
						{ at: until, what: "until", round },
					]
				: [],
		),
		...uses.map(({ at }): Moment => ({ at, what: "used", round: -1 })),
		...checks
			.filter(({ purpose }) => purpose === "after_round")
			.map(({ at }): Moment => ({ at, what: "tested", round: -1 })),
	].sort((a, b) => inTime(a.at, b.at) || PLACES[a.what] - PLACES[b.what]);
}
