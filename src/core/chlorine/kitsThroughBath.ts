import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

/** Wet kits that one preparation of the soak must bear. */
export const kitsThroughBath = calculation<{ kitsInLoad: number; kitsInUse: number }, number>({
	key: "kits_through_bath",
	label: say`Kits through one solution`,
	unit: say`kits`,
	formula: say`A full soak, or, where they are more, the kits of the fullest round; of solution made once a day, of all rounds that it serves.`,
	source: sources.carryIn,
	inputs: {
		kitsInLoad: { label: say`Kits in a full soak`, unit: say`kits`, min: 1 },
		kitsInUse: { label: say`Kits that come while it is used`, unit: say`kits`, min: 0 },
	},
	example: { inputs: { kitsInLoad: 3, kitsInUse: 5 }, result: 5, within: 0 },
	compute: ({ kitsInLoad, kitsInUse }) => Math.max(kitsInLoad, kitsInUse),
});
