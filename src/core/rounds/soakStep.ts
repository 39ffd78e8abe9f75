import type { Step } from "./step.ts";
import { inLoad } from "./timedSteps.ts";

/**
 * The step that is the soak: waiting, counted by load, long enough.
 *
 * Where several are, the first; where none is long enough, the longest, because that
 * is the one the unit soaks in. Undefined where no waiting step is counted by load.
 *
 * @param shortestMinutes shortest soak the unit accepts; undefined where it cannot be read: the longest then
 */
export function soakStep(
	steps: readonly Step[],
	shortestMinutes: number | undefined,
): string | undefined {
	const waits = steps.filter(({ basis, hands_on }) => basis === "load" && hands_on === "no");
	const longest = Math.max(...waits.map(({ minutes }) => minutes));
	const enough = Math.min(shortestMinutes ?? longest, longest);
	return waits.find(({ minutes }) => minutes >= enough)?.step;
}

/** Whether a timed step is this step of the list; a round of several loads says which load in its name. */
export function isStep(timed: string, listed: string | undefined): boolean {
	if (listed === undefined || !timed.startsWith(listed)) return false;
	const [load, loads] = timed.slice(listed.length).match(/\d+/g) ?? [];
	return timed === (loads ? inLoad(listed, Number(load), Number(loads)) : listed);
}
