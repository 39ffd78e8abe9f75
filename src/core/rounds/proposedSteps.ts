import { say } from "../say.ts";
import { commonPractice, type Source, sources } from "../sources.ts";
import type { Step } from "./step.ts";

/** A step of a round as a unit could begin with it, and where it comes from. */
export interface ProposedStep extends Step {
	readonly source: Source;
}

const step = (
	basis: Step["basis"],
	minutes: number,
	hands_on: Step["hands_on"],
	words: string,
	source: Source = commonPractice,
): ProposedStep => ({ step: words, basis, minutes, hands_on, source });

/**
 * Steps of a round to begin with, for a person to check against the unit's own protocol.
 *
 * Cleaning comes before disinfection, as in newer handbooks; older ones soak first.
 * Minutes are estimates, the longer end of what is usual, so that a round is rather
 * planned too long than too short; only the soak has a source.
 *
 * @param soakMinutes shortest soak the unit accepts
 */
export function proposedSteps(soakMinutes: number): readonly ProposedStep[] {
	return [
		step(
			"round",
			15,
			"yes",
			say`Gloves, apron and eye protection on, window open; mix and label the solution`,
		),
		step("kit", 5, "yes", say`Wipe off, take apart and count the pieces`),
		step("kit", 15, "yes", say`Wash and brush every piece in soapy water`),
		step("kit", 10, "yes", say`Rinse off the soap, look for scale, drain and dry`),
		step(
			"load",
			soakMinutes,
			"no",
			say`Soak fully under the solution, no air trapped`,
			sources.soakMinutes,
		),
		step(
			"load",
			10,
			"yes",
			say`Rinse in order through the buckets of boiled, cooled water`,
			sources.threeRinses,
		),
		step("round", 30, "no", say`Dry in the air, covered with a clean cloth`),
		step("kit", 10, "yes", say`Look for damage, count, put together and test`),
		step("kit", 5, "yes", say`Pack, label with the date and put away`),
		step("round", 10, "yes", say`Pour the solution away and clean up`),
	];
}
