import type { TimedStep } from "./timedSteps.ts";

/** The soak of three kits from 7:30 to 7:50, for worked examples. */
export const exampleSoak: TimedStep = {
	step: "soak",
	startsAt: 450,
	endsAt: 470,
	handsOn: "no",
	kits: 3,
	load: 1,
	method: "chlorine",
};
