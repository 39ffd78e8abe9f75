import { calculation } from "../calculation.ts";
import { fixed } from "../fixed.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { SECONDS_PER_MINUTE } from "./fuelQuantity.ts";
import { heatToBoil, KJ_PER_KG_EVAPORATED, KJ_PER_LITRE_PER_C } from "./heatToBoil.ts";

/** Boiling the rinse water of one round. */
export interface Boiling {
	/** Water needed for the rinse buckets. */
	readonly litres: number;
	/** Water to start with: what boils away is added. */
	readonly startLitres: number;
	readonly batches: number;
	readonly heatMinutes: number;
	readonly holdMinutes: number;
	readonly coolMinutes: number;
	/** Minutes from lighting the stove to water that is cool enough. */
	readonly allMinutes: number;
	readonly kj: number;
}

interface Inputs {
	readonly loads: number;
	readonly bucketsPerLoad: number;
	readonly bucketLitres: number;
	readonly solutionLitres: number;
	readonly potLitres: number;
	readonly pots: number;
	readonly netKw: number;
	readonly drawnC: number;
	readonly boilingC: number;
	readonly holdMinutes: number;
	readonly coolMinutes: number;
}

/** 30 L in two batches of 20 L; 2 × 2.257 kW × 60 s ÷ 2,257 boils away; 30.12 × 4.186 × 75 kJ. */
const example: Boiling = {
	litres: 30,
	startLitres: 30.12,
	batches: 2,
	heatMinutes: 69.8285,
	holdMinutes: 1,
	coolMinutes: 440,
	allMinutes: 511.8285,
	kj: 9456.174,
};

/**
 * How the rinse water of a round is boiled, from the loads set aside for it.
 *
 * Pots stand on the fire side by side and share its heat; what they do not hold at
 * once is boiled in further batches, each held at the boil.
 */
export const boilingOfRound = calculation<Inputs, Boiling>({
	key: "boiling",
	label: say`Boiling the rinse water`,
	unit: "L",
	formula: say`Litres = loads × buckets × litres in a bucket + boiled water for the solution. Start with what boils away more: heat that reaches the water × time held ÷ ${KJ_PER_KG_EVAPORATED}, each batch. Heating = litres × ${fixed(KJ_PER_LITRE_PER_C, 3)} × (boiling point − temperature drawn) ÷ heat that reaches the water. Batches = litres ÷ (pots × litres in a pot), rounded up.`,
	source: sources.heat,
	caution: say.safety`Boiling water scalds in a second. Do not carry open pots; keep children away; light fires outside or under a flue.`,
	inputs: {
		loads: { label: say`Loads of the round, prepare for`, unit: say`loads`, min: 0 },
		bucketsPerLoad: { label: say`Rinse buckets of boiled water`, unit: say`buckets/load`, min: 0 },
		bucketLitres: { label: say`Boiled water in a bucket`, unit: "L", min: 0 },
		solutionLitres: { label: say`Boiled water for the solution`, unit: "L", min: 0 },
		potLitres: { label: say`Water in a pot`, unit: "L", min: 1e-3 },
		pots: { label: say`Pots on the fire at once`, unit: say`pots`, min: 1 },
		netKw: { label: say`Heat that reaches the water`, unit: "kW", min: 1e-6 },
		drawnC: { label: say`Temperature of the water drawn`, unit: "°C" },
		boilingC: { label: say`Boiling point`, unit: "°C" },
		holdMinutes: { label: say`Keep at the boil for`, unit: "min", min: 0 },
		coolMinutes: { label: say`Cooling`, unit: "min", min: 0 },
	},
	example: {
		inputs: {
			loads: 1,
			bucketsPerLoad: 3,
			bucketLitres: 10,
			solutionLitres: 0,
			potLitres: 10,
			pots: 2,
			netKw: 2.257,
			drawnC: 25,
			boilingC: 100,
			holdMinutes: 1,
			coolMinutes: 440,
		},
		result: example,
		within: 1e-3,
	},
	compute: ({
		loads,
		bucketsPerLoad,
		bucketLitres,
		solutionLitres,
		potLitres,
		pots,
		netKw,
		drawnC,
		boilingC,
		holdMinutes,
		coolMinutes,
	}) => {
		const litres = loads * bucketsPerLoad * bucketLitres + solutionLitres;
		const batches = Math.ceil(litres / (pots * potLitres));
		const boilsAway = (batches * netKw * holdMinutes * SECONDS_PER_MINUTE) / KJ_PER_KG_EVAPORATED;
		const startLitres = litres + boilsAway;
		const kj = heatToBoil(startLitres, drawnC, boilingC);
		const heatMinutes = kj / netKw / SECONDS_PER_MINUTE;
		return {
			litres,
			startLitres,
			batches,
			heatMinutes,
			holdMinutes,
			coolMinutes,
			allMinutes: heatMinutes + batches * holdMinutes + coolMinutes,
			kj,
		};
	},
});
