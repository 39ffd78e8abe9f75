import { calculation } from "../calculation.ts";
import { fixed } from "../fixed.ts";
import { refuse } from "../refusal.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { SECONDS_PER_MINUTE } from "./fuelQuantity.ts";
import { heatToBoil, KJ_PER_LITRE_PER_C } from "./heatToBoil.ts";

/** Power that reaches the water. */
export const netPower = calculation<{ heatKw: number | null; efficiency: number }, number>({
	key: "net_kw",
	label: say`Heat that reaches the water`,
	unit: "kW",
	formula: say`Heat the stove gives × share that reaches the pot.`,
	source: sources.stoves,
	inputs: {
		heatKw: { label: say`Heat the stove gives`, unit: "kW" },
		efficiency: {
			label: say`Share of the heat that reaches the pot`,
			unit: say`share`,
			min: 0.001,
			max: 1,
		},
	},
	example: { inputs: { heatKw: 3, efficiency: 0.2 }, result: 0.6, within: 1e-12 },
	compute: ({ heatKw, efficiency }) =>
		heatKw
			? heatKw * efficiency
			: refuse({
					code: "no-heat",
					received: heatKw === null ? "" : "0 kW",
					allowed: say`more than 0 kW`,
					message: say`A stove that gives no heat never boils the water; enter the heat it gives.`,
					place: { file: "unit.csv", line: null, column: "heat_kw" },
				}),
});

interface Measured {
	readonly potLitres: number;
	readonly drawnC: number;
	readonly boilingC: number;
	readonly minutes: number;
}

/** Power that reaches the water, from how long a full pot of the unit takes to boil. */
export const netPowerMeasured = calculation<Measured, number>({
	key: "net_kw_measured",
	label: say`Heat that reaches the water, from your own pot`,
	unit: "kW",
	formula: say`Litres in a pot × ${fixed(KJ_PER_LITRE_PER_C, 3)} × (boiling point − temperature drawn) ÷ seconds to the boil.`,
	source: sources.heat,
	inputs: {
		potLitres: { label: say`Water in a pot`, unit: "L", min: 1e-3 },
		drawnC: { label: say`Temperature of the water drawn`, unit: "°C" },
		boilingC: { label: say`Boiling point`, unit: "°C" },
		minutes: { label: say`A full pot takes to boil`, unit: "min", min: 1 },
	},
	// 10 L by 75 °C are 3,139.5 kJ, in 50 minutes.
	example: {
		inputs: { potLitres: 10, drawnC: 25, boilingC: 100, minutes: 50 },
		result: 1.0465,
		within: 1e-9,
	},
	compute: ({ potLitres, drawnC, boilingC, minutes }) =>
		drawnC < boilingC
			? heatToBoil(potLitres, drawnC, boilingC) / (minutes * SECONDS_PER_MINUTE)
			: refuse({
					code: "drawn-at-boil",
					received: say`${drawnC} °C`,
					allowed: say`cooler than ${boilingC} °C`,
					message: say`Water drawn at ${drawnC} °C boils at once; the minutes measured say nothing of the stove.`,
					place: { file: "unit.csv", line: null, column: "tap_water_c" },
				}),
});
