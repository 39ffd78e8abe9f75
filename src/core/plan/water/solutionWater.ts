import { calculation, derive, type Figure } from "../../calculation.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { sources } from "../../sources.ts";
import { litresOfPreparation } from "../chlorine/litresOfPreparation.ts";

/** Boiled water that one preparation takes: all its litres, of which the product is a part. */
const boiledForSolution = calculation<{ water: "tap" | "boiled"; litres: number }, number>({
	key: "boiled_for_solution",
	label: say`Boiled water for the solution`,
	unit: "L",
	formula: say`The litres of a preparation where it is made with boiled water; none where it is made with water from the tap.`,
	source: sources.soakStrength,
	inputs: {
		water: { label: say`Solution is made with`, unit: "" },
		litres: { label: say`Litres of a preparation`, unit: "L", min: 0 },
	},
	example: { inputs: { water: "boiled", litres: 5.5 }, result: 5.5, within: 0 },
	compute: ({ water, litres }) => (water === "boiled" ? litres : 0),
});

/** Boiled water for one preparation of the solution. */
export function solutionWater(read: ReadWorkbook): Figure {
	return derive(boiledForSolution, {
		water: read.settings.solution_water,
		litres: litresOfPreparation(read),
	});
}
