import { say } from "../say.ts";
import { commonPractice, type Source, sources } from "../sources.ts";
import type { Step } from "./step.ts";

/** A step of a round as a unit could begin with it, and where it comes from. */
export interface ProposedStep extends Step {
	readonly source: Source;
}

interface Given {
	readonly method?: Step["method"];
	readonly source?: Source;
}

const step = (
	basis: Step["basis"],
	minutes: number,
	hands_on: Step["hands_on"],
	words: string,
	{ method = null, source = commonPractice }: Given = {},
): ProposedStep => ({ step: words, basis, minutes, hands_on, method, source });

/**
 * Steps of a round to begin with, for a person to check against the unit's own protocol.
 *
 * Cleaning comes before disinfection, as in newer handbooks; older ones soak first. What is
 * done for chlorine alone says so: its mixing then waits for vinegar to be gone.
 * Minutes are estimates, the longer end of what is usual, so that a round is rather
 * planned too long than too short; only the soak has a source.
 *
 * @param soakMinutes shortest soak the unit accepts
 */
export function proposedSteps(soakMinutes: number): readonly ProposedStep[] {
	const method = "chlorine";
	return [
		step("kit", 3, "yes", say`Wipe off with gauze right after use, before anything dries`),
		step(
			"round",
			5,
			"yes",
			say`Gloves, apron, mask and eye protection on, window open, containers set out`,
		),
		step("round", 10, "yes", say`Mix and label the chlorine solution`, { method }),
		step("kit", 5, "yes", say`Take apart and count the pieces`),
		step("kit", 15, "yes", say`Wash and brush every piece in soapy water, narrow tips with a pick`),
		step("kit", 10, "yes", say`Rinse off the soap, look for scale, drain and dry`),
		step("load", soakMinutes, "no", say`Soak fully under the solution, no air trapped`, {
			method,
			source: sources.soakMinutes,
		}),
		step(
			"load",
			10,
			"yes",
			say`Take out with disinfected forceps, rinse in order through the buckets of boiled, cooled water`,
			{ method, source: sources.threeRinses },
		),
		step("round", 10, "yes", say`Pour the solution away and clean up the dirty side`, { method }),
		step(
			"round",
			5,
			"yes",
			say`Gloves off, hands washed, sterile gloves on: from here on everything is clean`,
		),
		step("kit", 10, "yes", say`Dry inside and out with sterile gauze (in the air alone: hours)`, {
			source: sources.drying,
		}),
		step("round", 20, "no", say`Let the rest dry in the air, under sterile linen`, {
			source: sources.drying,
		}),
		step("kit", 10, "yes", say`Look for damage, count, put together and test`),
		step("kit", 5, "yes", say`Pack, label with the date and store, covered and dry`),
	];
}
