import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { commonPractice } from "../source.ts";
import type { Hearth } from "./batch.ts";
import { scheduleOf } from "./boilingSchedule.ts";
import { onTheFire } from "./onTheFire.ts";

interface Inputs extends Omit<Hearth, "keepsMinutes"> {
	readonly litres: number;
}

/** From lighting the first fire to the water of one load being cool, with the stoves and pots there are. */
export const minutesOfWater = calculation<Inputs, number>({
	key: "minutes_of_water",
	label: say`From lighting the fire to cool water`,
	unit: "min",
	formula: say`Heating, hold and cooling of one load's water; where the pots do not hold it, the rest is boiled when a pot is free again.`,
	source: commonPractice,
	inputs: {
		litres: { label: say`Water for one load`, unit: "L", min: 0 },
		...onTheFire,
	},
	example: {
		// 10 L in 50 minutes, 440 to cool; two pots together 100 + 440, then the third alone 50 + 440.
		inputs: {
			litres: 30,
			stoves: 1,
			pots: 2,
			potsOnStove: 2,
			potLitres: 10,
			netKw: 1.0465,
			drawnC: 25,
			boilingC: 100,
			holdMinutes: 0,
			coolMinutes: 440,
		},
		result: 1030,
		within: 1e-9,
	},
	compute: ({ litres, ...hearth }) => {
		const need = { litres, from: 0, until: 0 };
		const { fires } = scheduleOf([need], { ...hearth, keepsMinutes: Number.MAX_SAFE_INTEGER });
		return Math.max(0, ...fires.map(({ lightAt }) => -lightAt));
	},
});
