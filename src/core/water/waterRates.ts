import { calculation } from "../calculation.ts";
import type { LoadMethod } from "../methods/method.ts";
import { type Loads, soaks } from "../rounds/loads.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";
import type { Rates } from "../stock/ratesOfItem.ts";
import { SECONDS_PER_MINUTE } from "./fuelQuantity.ts";
import { KJ_PER_KG_EVAPORATED } from "./heatToBoil.ts";

interface Inputs {
	readonly soapyLitres: number;
	readonly plainRinseLitres: number;
	readonly solutionLitres: number;
	readonly solutionMade: "each_round" | "each_day";
	readonly wardLitres: number;
	readonly bucketsPerLoad: number;
	readonly bucketLitres: number;
	readonly litresOnFire: number;
	readonly loads: Loads;
	readonly boilLitres: number;
	readonly boilMinutes: number;
	readonly steamLitres: number;
	readonly steamMinutes: number;
	readonly netKw: number;
	readonly holdMinutes: number;
	readonly descaleBathLitres: number;
	readonly vinegarLitres: number;
	readonly descaleRinseLitres: number;
	readonly kinds: number;
}

/** Water that a day, a round, a load and a descaling take, so that it is planned like any other item. */
export const waterRates = calculation<Inputs, Rates>({
	key: "water_rates",
	label: say`Water by day, round, load and descaling`,
	unit: "L",
	formula: say`A round: soapy water + plain rinse + the solution that is made for each. A soak: rinse buckets × litres + what boils away while held. A load that is boiled or steamed: its water + what boils away. A descaling: bath less vinegar + rinse. A day: other solution on the ward. The product's own volume is not taken off.`,
	source: definition,
	inputs: {
		soapyLitres: { label: say`Soapy water in a round`, unit: "L", min: 0 },
		plainRinseLitres: { label: say`Plain rinse water in a round`, unit: "L", min: 0 },
		solutionLitres: { label: say`Litres of a preparation`, unit: "L", min: 0 },
		solutionMade: { label: say`Solution is made`, unit: "" },
		wardLitres: { label: say`Other solution on the ward`, unit: say`L/day`, min: 0 },
		bucketsPerLoad: { label: say`Rinse buckets of boiled water`, unit: say`buckets/load`, min: 0 },
		bucketLitres: { label: say`Boiled water in a bucket`, unit: "L", min: 0 },
		litresOnFire: { label: say`Water on the fire at once`, unit: "L", min: 1e-3 },
		loads: { label: say`Kits in one load of each method`, unit: say`kits` },
		boilLitres: { label: say`Water to boil a load of pieces in`, unit: "L", min: 0 },
		boilMinutes: { label: say`Pieces are kept at the boil for`, unit: "min", min: 0 },
		steamLitres: { label: say`Water to steam a load of pieces`, unit: "L", min: 0 },
		steamMinutes: { label: say`Pieces are kept in steam for`, unit: "min", min: 0 },
		netKw: { label: say`Heat that reaches the water`, unit: "kW", min: 0 },
		holdMinutes: { label: say`Keep at the boil for`, unit: "min", min: 0 },
		descaleBathLitres: { label: say`Descaling bath`, unit: "L", min: 0 },
		vinegarLitres: { label: say`Vinegar for one descaling`, unit: "L", min: 0 },
		descaleRinseLitres: { label: say`Water to rinse the vinegar off`, unit: "L", min: 0 },
		kinds: { label: say`Kinds of kit`, unit: say`kinds`, min: 1 },
	},
	example: {
		// Two batches of a soak's 30 L boil away 2 × 2.257 kW × 60 s ÷ 2,257 kJ/kg; 20 minutes of boiling 1.2 L.
		inputs: {
			soapyLitres: 5,
			plainRinseLitres: 5,
			solutionLitres: 5.5,
			solutionMade: "each_round",
			wardLitres: 8,
			bucketsPerLoad: 3,
			bucketLitres: 10,
			litresOnFire: 20,
			loads: [...soaks(3), { method: "boiling", kits: 3 }],
			boilLitres: 5,
			boilMinutes: 20,
			steamLitres: 1.5,
			steamMinutes: 20,
			netKw: 2.257,
			holdMinutes: 1,
			descaleBathLitres: 2,
			vinegarLitres: 1,
			descaleRinseLitres: 4,
			kinds: 1,
		},
		result: { perDay: 8, perRound: 15.5, perLoad: [30.12, 6.2], perKit: [0], perDescale: 5 },
		within: 1e-9,
	},
	compute: (of) => {
		const boiled = of.bucketsPerLoad * of.bucketLitres;
		const batches = Math.ceil(boiled / of.litresOnFire);
		const boilsAway = (minutes: number) =>
			(of.netKw * minutes * SECONDS_PER_MINUTE) / KJ_PER_KG_EVAPORATED;
		const ofLoad: Readonly<Record<LoadMethod, number>> = {
			chlorine: boiled + boilsAway(batches * of.holdMinutes),
			boiling: of.boilLitres + boilsAway(of.boilMinutes),
			steam: of.steamLitres + boilsAway(of.steamMinutes),
		};
		const eachRound = of.solutionMade === "each_round";
		return {
			perDay: of.wardLitres,
			perRound: of.soapyLitres + of.plainRinseLitres + (eachRound ? of.solutionLitres : 0),
			perLoad: of.loads.map(({ method }) => ofLoad[method]),
			perKit: Array.from({ length: of.kinds }, () => 0),
			perDescale: Math.max(0, of.descaleBathLitres - of.vinegarLitres) + of.descaleRinseLitres,
		};
	},
});

/** A source of water and how much it gives a day; null: as much as is wanted. */
export interface WaterSource {
	readonly source: string;
	readonly litres_per_day: number | null;
}

/** What is taken from each source in its order, and what none of them gives. */
export function takenFrom(litres: number, sources: readonly WaterSource[]) {
	let left = litres;
	const taken = sources.map(({ source, litres_per_day }) => {
		const amount = Math.min(left, litres_per_day ?? left);
		left -= amount;
		return { source, litres: amount };
	});
	return { taken: taken.filter((part) => part.litres > 0), missing: left };
}
