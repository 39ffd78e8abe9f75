import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

export const SECONDS_PER_MINUTE = 60;
const KJ_PER_MJ = 1000;
const KJ_PER_KWH = 3600;

interface FuelInputs {
	readonly kj: number;
	readonly holdMinutes: number;
	readonly netKw: number;
	readonly efficiency: number;
	/** MJ/kg; null for electricity, which is counted in kWh. */
	readonly mjPerKg: number | null;
}

/** Fuel to heat the water and hold it at the boil: kg, or kWh of electricity. */
export const fuelQuantity = calculation<FuelInputs, number>({
	key: "fuel_quantity",
	label: say`Fuel`,
	unit: say`kg or kWh`,
	formula: say`(Heat + heat that reaches the water × time held) ÷ share that reaches the pot ÷ heating value.`,
	source: sources.stoves,
	inputs: {
		kj: { label: say`Heat to bring the water to the boil`, unit: "kJ", min: 0 },
		holdMinutes: { label: say`Kept at the boil`, unit: "min", min: 0 },
		netKw: { label: say`Heat that reaches the water`, unit: "kW", min: 0 },
		efficiency: {
			label: say`Share of the heat that reaches the pot`,
			unit: say`share`,
			min: 0.001,
		},
		mjPerKg: { label: say`Heating value of the fuel`, unit: "MJ/kg" },
	},
	example: {
		inputs: { kj: 3139.5, holdMinutes: 0, netKw: 1, efficiency: 0.12, mjPerKg: 16 },
		result: 1.635,
		within: 0.001,
	},
	compute: ({ kj, holdMinutes, netKw, efficiency, mjPerKg }) => {
		const given = (kj + netKw * holdMinutes * SECONDS_PER_MINUTE) / efficiency;
		return mjPerKg === null ? given / KJ_PER_KWH : given / KJ_PER_MJ / mjPerKg;
	},
});
