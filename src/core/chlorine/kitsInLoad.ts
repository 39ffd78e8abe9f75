import { calculation } from "../calculation.ts";
import { refuse } from "../refusal.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";

interface Inputs {
	readonly capacityKits: number;
	readonly fillLitres: number;
	readonly displacementLitres: number;
	readonly containerLitres: number;
}

/** Kits in one soak, where solution and kits together fit into the container. */
export const kitsInLoad = calculation<Inputs, number>({
	key: "kits_in_load",
	label: say`Kits in one soak`,
	unit: say`kits`,
	formula: say`As set, provided that solution + kits × space a kit takes is no more than the container.`,
	source: definition,
	inputs: {
		capacityKits: { label: say`Kits in one soak`, unit: say`kits`, min: 1 },
		fillLitres: { label: say`Solution in the soak container`, unit: "L", min: 0 },
		displacementLitres: { label: say`Space a kit takes in the soak`, unit: "L", min: 0 },
		containerLitres: { label: say`Size of the soak container`, unit: "L", min: 0 },
	},
	example: {
		inputs: { capacityKits: 3, fillLitres: 5, displacementLitres: 0.6, containerLitres: 10 },
		result: 3,
		within: 0,
	},
	compute: ({ capacityKits, fillLitres, displacementLitres, containerLitres }) => {
		const filled = fillLitres + capacityKits * displacementLitres;
		if (filled <= containerLitres + 1e-9) return capacityKits;
		const litres = Number(filled.toFixed(2));
		return refuse({
			code: "soak-too-small",
			received: say`${litres} L`,
			allowed: say`at most ${containerLitres} L`,
			message:
				capacityKits === 1
					? say`One kit in ${fillLitres} L of solution fills ${litres} L, and the container holds ${containerLitres} L. Take a larger container, or less solution if it still covers the kit.`
					: say`${capacityKits} kits in ${fillLitres} L of solution fill ${litres} L, and the container holds ${containerLitres} L. Take fewer kits at once or a larger container.`,
			place: { file: "unit.csv", line: null, column: "soak_container_litres" },
		});
	},
});
