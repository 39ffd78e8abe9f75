import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

/** Wet kits that one preparation of the soak must bear. */
export const kitsThroughBath = calculation<{ kitsInLoad: number; fullestRound: number }, number>({
	key: "kits_through_bath",
	label: say`Kits through one solution`,
	unit: say`kits`,
	formula: say`A full soak, or the kits of the fullest round where they are more.`,
	source: sources.carryIn,
	inputs: {
		kitsInLoad: { label: say`Kits in one soak`, unit: say`kits`, min: 1 },
		fullestRound: { label: say`Kits in the fullest round`, unit: say`kits`, min: 0 },
	},
	example: { inputs: { kitsInLoad: 3, fullestRound: 5 }, result: 5, within: 0 },
	compute: ({ kitsInLoad, fullestRound }) => Math.max(kitsInLoad, fullestRound),
});
