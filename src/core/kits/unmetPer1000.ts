import { chanceAtLeast, expectedBeyond } from "../counts/poisson.ts";
import type { DayClock } from "../rounds/dayClock.ts";
import { MINUTES_PER_DAY } from "../values/clock.ts";

/** When kits come back: at the end of rounds, or a fixed time after each use. */
export type Reprocessing =
	| {
			readonly kind: "in_rounds";
			/** Start of every round of the plan, and of the first round after it, in minutes. */
			readonly starts: readonly number[];
			/** From the start of a round to its kits being ready, in minutes. */
			readonly turnaround: number;
			readonly uses: DayClock;
	  }
	| {
			readonly kind: "after_each_use";
			readonly turnaround: number;
			readonly usesPerDay: readonly number[];
	  };

/**
 * Uses that find no kit ready, of 1,000.
 *
 * A use that finds none still occupies a kit of the next round (the cautious
 * reading). In rounds: over the rounds i, Σ L(c, U(sᵢ, sᵢ₊₁+D)) − L(c, U(sᵢ, sᵢ+D)),
 * divided by Σ U(sᵢ, sᵢ₊₁), with L(c, m) the mean excess of a Poisson count of mean
 * m over c; exact while the turnaround D is no longer than any gap. After each use:
 * the chance that at least c kits are in reprocessing, by Palm's theorem, weighted
 * by the uses of the days. With no uses at all, none is unmet.
 */
export function unmetPer1000(kits: number, reprocessing: Reprocessing): number {
	const { unmet, uses } =
		reprocessing.kind === "in_rounds"
			? unmetInRounds(kits, reprocessing)
			: unmetAfterEachUse(kits, reprocessing);
	return uses === 0 ? 0 : (1000 * unmet) / uses;
}

type Of<K> = Extract<Reprocessing, { kind: K }>;

function unmetInRounds(kits: number, { starts, turnaround, uses }: Of<"in_rounds">) {
	let unmet = 0;
	for (let i = 0; i + 1 < starts.length; i++) {
		const start = starts[i] as number;
		const next = starts[i + 1] as number;
		unmet +=
			expectedBeyond(kits, uses.between(start, next + turnaround)) -
			expectedBeyond(kits, uses.between(start, start + turnaround));
	}
	return { unmet, uses: uses.between(starts[0] as number, starts.at(-1) as number) };
}

function unmetAfterEachUse(kits: number, { turnaround, usesPerDay }: Of<"after_each_use">) {
	let unmet = 0;
	let uses = 0;
	for (const rate of usesPerDay) {
		unmet += rate * chanceAtLeast(kits, (rate * turnaround) / MINUTES_PER_DAY);
		uses += rate;
	}
	return { unmet, uses };
}
