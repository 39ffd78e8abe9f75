import type { TimedStep } from "../rounds/timedSteps.ts";

/** Minutes by a round's clock between which the pieces of a load are at the boil, or in steam. */
export interface PiecesHeld {
	readonly from: number;
	readonly until: number;
}

/**
 * When the pieces of a load are held at the boil, or in steam.
 *
 * The step that times it is the one that waits, of those long enough the one nearest to the
 * time wanted, and of such the last: what comes before it heats, what comes after it cools.
 * Where none is long enough it is the longest. A step that heats and holds in one holds at its end.
 *
 * @param steps the steps of one load, at least one
 */
export function piecesHeld(steps: readonly TimedStep[], holdMinutes: number): PiecesHeld {
	const waits = steps.filter(({ handsOn }) => handsOn === "no");
	const asked = waits.length > 0 ? waits : steps;
	const long = asked.filter((step) => lengthOf(step) >= holdMinutes);
	const timing =
		long.length > 0
			? long.reduce((near, step) => (lengthOf(step) <= lengthOf(near) ? step : near))
			: asked.reduce((most, step) => (lengthOf(step) >= lengthOf(most) ? step : most));
	const heatsToo = timing === steps[0];
	const from = heatsToo ? Math.max(timing.startsAt, timing.endsAt - holdMinutes) : timing.startsAt;
	return { from, until: from + holdMinutes };
}

function lengthOf({ startsAt, endsAt }: TimedStep): number {
	return endsAt - startsAt;
}
