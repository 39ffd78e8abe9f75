import type { TimedStep } from "../rounds/timedSteps.ts";
import { timingStep } from "./timingStep.ts";

/** Minutes by a round's clock between which the pieces of a load are at the boil, or in steam. */
export interface PiecesHeld {
	readonly from: number;
	readonly until: number;
}

/**
 * When the pieces of a load are held at the boil, or in steam: from the start of the step
 * that times it. A step that heats and holds in one holds at its end.
 *
 * @param steps the steps of one load, at least one
 */
export function piecesHeld(steps: readonly TimedStep[], holdMinutes: number): PiecesHeld {
	const timing = timingStep(
		steps.map((step) => ({
			...step,
			minutes: step.endsAt - step.startsAt,
			waits: step.handsOn === "no",
		})),
		holdMinutes,
	);
	const { startsAt, endsAt } = timing as TimedStep;
	const heatsToo =
		startsAt === (steps.find(({ handsOn }) => handsOn === "no") ?? steps[0])?.startsAt;
	const from = heatsToo ? Math.max(startsAt, endsAt - holdMinutes) : startsAt;
	return { from, until: from + holdMinutes };
}
