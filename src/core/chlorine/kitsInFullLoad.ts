import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";

/** Wet kits that come into one soak at the most: what it holds, or all that the unit has. */
export const kitsInFullLoad = calculation<{ capacityKits: number; kitsOfUnit: number }, number>({
	key: "kits_in_full_load",
	label: say`Kits in a full soak`,
	unit: say`kits`,
	formula: say`Kits in one soak, at most all kits of the unit, also those out of service; as set where none is listed.`,
	source: definition,
	inputs: {
		capacityKits: { label: say`Kits in one soak`, unit: say`kits`, min: 1 },
		kitsOfUnit: { label: say`Kits of the unit`, unit: say`kits`, min: 0 },
	},
	example: { inputs: { capacityKits: 50, kitsOfUnit: 4 }, result: 4, within: 0 },
	compute: ({ capacityKits, kitsOfUnit }) =>
		kitsOfUnit > 0 ? Math.min(capacityKits, kitsOfUnit) : capacityKits,
});
