import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

/** Above this height water boils so cool that it is kept at the boil for longer. */
export const HIGH_UP_M = 2000;
const MINUTES = 1;
const MINUTES_HIGH_UP = 3;

/** How long water is kept at the boil where the unit has not set it: longer, high up. */
export const holdAtBoil = calculation<{ altitudeM: number }, number>({
	key: "hold_at_boil",
	label: say`Keep at the boil for`,
	unit: "min",
	formula: say`Left blank: ${MINUTES} minute from a rolling boil, and ${MINUTES_HIGH_UP} above ${HIGH_UP_M} m. It is a rule for drinking water; your own protocol for rinse water comes first.`,
	source: sources.boilHold,
	inputs: { altitudeM: { label: say`Height above the sea`, unit: "m" } },
	example: { inputs: { altitudeM: 2400 }, result: 3, within: 0 },
	compute: ({ altitudeM }) => (altitudeM > HIGH_UP_M ? MINUTES_HIGH_UP : MINUTES),
});
