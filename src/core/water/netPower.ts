import { calculation, refuse } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

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
