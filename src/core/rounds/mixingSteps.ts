import type { Step } from "./step.ts";

/**
 * The steps in which chlorine is opened and the solution mixed: what is done once a round,
 * for chlorine alone, before the first load. Where no step says its method, none is known.
 */
export function mixingSteps(steps: readonly Step[]): Step[] {
	const soak = steps.findIndex(
		({ basis, method }) => basis === "load" && (method ?? "chlorine") === "chlorine",
	);
	return steps.slice(0, Math.max(0, soak)).filter(isMixing);
}

function isMixing({ basis, hands_on, method }: Step): boolean {
	return basis === "round" && hands_on === "yes" && method === "chlorine";
}

/** The steps with the mixing right before the first load, as it is where vinegar comes first. */
export function withMixingLast(steps: readonly Step[]): Step[] {
	const mixing = mixingSteps(steps);
	const others = steps.filter((step) => !mixing.includes(step));
	const load = others.findIndex(({ basis }) => basis === "load");
	return mixing.length === 0
		? [...steps]
		: [...others.slice(0, load), ...mixing, ...others.slice(load)];
}
