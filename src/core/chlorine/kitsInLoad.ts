import { calculation, refuse } from "../calculation.ts";
import { definition } from "../sources.ts";

interface Inputs {
	readonly capacityKits: number;
	readonly fillLitres: number;
	readonly displacementLitres: number;
	readonly containerLitres: number;
}

/** Kits in one soak, where solution and kits together fit into the container. */
export const kitsInLoad = calculation<Inputs, number>({
	key: "kits_in_load",
	label: "Kits in one soak",
	unit: "kits",
	formula:
		"As set, provided that solution + kits × space a kit takes is no more than the container.",
	source: definition,
	inputs: {
		capacityKits: { label: "Kits in one soak", unit: "kits", min: 1 },
		fillLitres: { label: "Solution in the soak container", unit: "L", min: 0 },
		displacementLitres: { label: "Space a kit takes in the soak", unit: "L", min: 0 },
		containerLitres: { label: "Size of the soak container", unit: "L", min: 0 },
	},
	example: {
		inputs: { capacityKits: 3, fillLitres: 5, displacementLitres: 0.6, containerLitres: 10 },
		result: 3,
		within: 0,
	},
	compute: ({ capacityKits, fillLitres, displacementLitres, containerLitres }) => {
		const filled = fillLitres + capacityKits * displacementLitres;
		if (filled <= containerLitres + 1e-9) return capacityKits;
		return refuse({
			code: "soak-too-small",
			received: `${Number(filled.toFixed(2))} L`,
			allowed: `at most ${containerLitres} L`,
			message: `${capacityKits} kits in ${fillLitres} L of solution fill ${Number(filled.toFixed(2))} L, and the container holds ${containerLitres} L. Take fewer kits at once or a larger container.`,
			place: { file: "unit.csv", line: null, column: "soak_container_litres" },
		});
	},
});
