import type { Step } from "./step.ts";

/** What makes a round long: minutes once, for each kit and for each load. */
export interface RoundLength {
	readonly perRound: number;
	/** Already shared among the people in the round. */
	readonly perKit: number;
	readonly perLoad: number;
	readonly kitsInLoad: number;
}

/** A list of steps, put together by what they are counted by. */
export function roundLength(
	steps: readonly Step[],
	workers: number,
	kitsInLoad: number,
): RoundLength {
	const minutesBy = (basis: Step["basis"]) =>
		steps.reduce((sum, step) => sum + (step.basis === basis ? step.minutes : 0), 0);
	return {
		perRound: minutesBy("round"),
		perKit: minutesBy("kit") / workers,
		perLoad: minutesBy("load"),
		kitsInLoad,
	};
}

/**
 * Minutes of a round with this many kits; without a kit it does not run.
 *
 * @example minutesOf({ perRound: 30, perKit: 10, perLoad: 20, kitsInLoad: 3 }, 4) // 110
 */
export function minutesOf(length: RoundLength, kits: number): number {
	if (kits === 0) return 0;
	const loads = Math.ceil(kits / length.kitsInLoad);
	return length.perRound + length.perKit * kits + length.perLoad * loads;
}

/**
 * The most kits, up to `most`, with which a round ends within the minutes it has.
 *
 * One where not even one kit does: the round is then too long, which is said elsewhere,
 * and what comes must still go somewhere.
 */
export function mostKitsWithin(length: RoundLength, minutes: number, most: number): number {
	let kits = most;
	while (kits > 1 && minutesOf(length, kits) > minutes) kits--;
	return kits;
}
