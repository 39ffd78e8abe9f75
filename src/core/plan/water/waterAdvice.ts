import { problemsOf } from "../../outcome.ts";
import type { Problem } from "../../problem.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { stoveFigures } from "./stoveFigures.ts";

/**
 * Why the boiling sheet has no times, where it has none.
 *
 * The rest of the plan does not wait for the stove: a heat that was not given is a
 * remark, an impossible one a problem.
 */
export function waterAdvice({ read }: UnitFigures): Problem[] {
	const { boilingC, netKw, coolMinutes } = stoveFigures(read);
	return [boilingC, netKw, coolMinutes]
		.flatMap(({ outcome }) => problemsOf(outcome))
		.map((problem) => (problem.code === "not-given" ? { ...problem, weight: "advice" } : problem));
}
