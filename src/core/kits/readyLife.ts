import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import type { ReadyLife, Renewal } from "./renewalSteps.ts";

interface Inputs {
	readonly days: number;
	readonly renewal: Renewal;
}

/** How long a ready kit may be used, in whole days, and what happens then. */
export const readyLife = calculation<Inputs, ReadyLife>({
	key: "ready_life",
	label: say`How long a ready kit may be used`,
	unit: "",
	formula: say`Through the end of the day it became ready + the days a disinfected kit stays ready. Parts of a day are left out, on the safe side.`,
	source: sources.readyLife,
	rounding: say`Whole days, rounded down.`,
	inputs: {
		days: { label: say`Days a disinfected kit stays ready`, unit: say`days`, min: 0 },
		renewal: { label: say`When unused kits are renewed`, unit: "" },
	},
	example: {
		inputs: { days: 7.5, renewal: "in_time" },
		result: { days: 7, renewal: "in_time" },
		within: 0,
	},
	compute: ({ days, renewal }) => ({ days: Math.floor(days), renewal }),
});
