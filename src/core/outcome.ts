import type { Problem } from "./problem.ts";

/**
 * A value, or the problems because of which there is none.
 *
 * Nothing in the core stands in for a missing value: no 0, no NaN, no empty text.
 */
export type Outcome<T> =
	| { readonly ok: true; readonly value: T }
	| { readonly ok: false; readonly problems: readonly Problem[] };

export function answer<T>(value: T): Outcome<T> {
	return { ok: true, value };
}

export function noAnswer(...problems: readonly Problem[]): Outcome<never> {
	return { ok: false, problems };
}

/** Most reasons that one figure carries; every problem stands in the list of problems anyway. */
const MOST_REASONS = 20;

/**
 * The first of the problems, each once, as the reasons of a figure: thousands of
 * bad rows would otherwise travel, again and again, with all that waits for them.
 */
export function firstReasons(problems: readonly Problem[]): readonly Problem[] {
	return [...new Set(problems)].slice(0, MOST_REASONS);
}

/** The problems of an outcome; none when it has a value. */
export function problemsOf(outcome: Outcome<unknown>): readonly Problem[] {
	return outcome.ok ? [] : outcome.problems;
}

/** The value of an outcome, or undefined where there is none: for remarks that then are not made. */
export function valueIn<T>({ outcome }: { readonly outcome: Outcome<T> }): T | undefined {
	return outcome.ok ? outcome.value : undefined;
}
