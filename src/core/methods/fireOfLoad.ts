import { calculation } from "../calculation.ts";
import { fixed } from "../fixed.ts";
import { refuse } from "../refusal.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { SECONDS_PER_MINUTE } from "../water/fuelQuantity.ts";
import { heatToBoil, KJ_PER_KG_EVAPORATED, KJ_PER_LITRE_PER_C } from "../water/heatToBoil.ts";

/** One pot on the fire in which a load of pieces is boiled, or over which it is steamed. */
export interface FireOfLoad {
	/** Water that is wanted at the end. */
	readonly litres: number;
	/** Water to start with: what boils away is added. */
	readonly startLitres: number;
	/** From lighting the stove to a rolling boil, or to steam. */
	readonly heatMinutes: number;
	readonly holdMinutes: number;
	/** Heat to bring it to the boil. */
	readonly kj: number;
}

interface Inputs {
	readonly litres: number;
	readonly holdMinutes: number;
	readonly potLitres: number;
	readonly netKw: number;
	readonly drawnC: number;
	readonly boilingC: number;
}

/** Water, time and heat of a load that is boiled or steamed; each load has fresh water. */
export const fireOfLoad = calculation<Inputs, FireOfLoad>({
	key: "fire_of_load",
	label: say`Fire under a load of pieces`,
	unit: "",
	formula: say`Start with what boils away more: heat that reaches the water × minutes ÷ ${KJ_PER_KG_EVAPORATED}. Heating = litres × ${fixed(KJ_PER_LITRE_PER_C, 3)} × (boiling point − temperature drawn) ÷ heat that reaches the water.`,
	source: sources.heat,
	caution: say.safety`Boiling water and steam scald in a second. Lift the lid away from you; take pieces out when they have cooled; keep children away.`,
	inputs: {
		litres: { label: say`Water for a load`, unit: "L", min: 1e-3 },
		holdMinutes: { label: say`From a rolling boil, or from when steam comes`, unit: "min", min: 0 },
		potLitres: { label: say`Water in a pot`, unit: "L", min: 1e-3 },
		netKw: { label: say`Heat that reaches the water`, unit: "kW", min: 1e-6 },
		drawnC: { label: say`Temperature of the water drawn`, unit: "°C" },
		boilingC: { label: say`Boiling point`, unit: "°C" },
	},
	example: {
		// 2.257 kW × 1,200 s ÷ 2,257 kJ/kg boils away: 1.2 L; 6.2 × 4.186 × 75 kJ at 2.257 kW.
		inputs: {
			litres: 5,
			holdMinutes: 20,
			potLitres: 10,
			netKw: 2.257,
			drawnC: 25,
			boilingC: 100,
		},
		result: { litres: 5, startLitres: 6.2, heatMinutes: 14.373726, holdMinutes: 20, kj: 1946.49 },
		within: 1e-6,
	},
	compute: ({ litres, holdMinutes, potLitres, netKw, drawnC, boilingC }) => {
		const startLitres = litres + (netKw * holdMinutes * SECONDS_PER_MINUTE) / KJ_PER_KG_EVAPORATED;
		if (litres > potLitres) return tooSmall(litres, potLitres);
		const kj = heatToBoil(startLitres, drawnC, boilingC);
		return { litres, startLitres, heatMinutes: kj / netKw / SECONDS_PER_MINUTE, holdMinutes, kj };
	},
});

function tooSmall(litres: number, potLitres: number) {
	return refuse({
		code: "pot-too-small",
		received: say`${litres} L`,
		allowed: say`at most ${potLitres} L`,
		message: say`A load of pieces takes ${litres} L of water, and a pot holds ${potLitres} L. Take a larger pot, or fewer kits at once in less water.`,
		place: { file: "unit.csv", line: null, column: "pot_litres" },
	});
}
