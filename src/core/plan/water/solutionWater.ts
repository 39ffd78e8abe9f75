import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { valueIn } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { sources } from "../../sources.ts";
import { isMixed, litresOfPreparation } from "../chlorine/litresOfPreparation.ts";

interface Inputs {
	readonly water: "tap" | "boiled";
	readonly litres: number;
	readonly preparations: number;
}

/** Boiled water that preparations take: all its litres, of which the product is a part. */
const boiledForSolution = calculation<Inputs, number>({
	key: "boiled_for_solution",
	label: say`Boiled water for the solution`,
	unit: "L",
	formula: say`Preparations × litres of a preparation where it is made with boiled water; none where it is made with water from the tap.`,
	source: sources.soakStrength,
	inputs: {
		water: { label: say`Solution is made with`, unit: "" },
		litres: { label: say`Litres of a preparation`, unit: "L", min: 0 },
		preparations: { label: say`Preparations`, unit: say`preparations`, min: 0 },
	},
	example: { inputs: { water: "boiled", litres: 5.5, preparations: 1 }, result: 5.5, within: 0 },
	compute: ({ water, litres, preparations }) => (water === "boiled" ? preparations * litres : 0),
});

const one = nameFigure(say`Preparations`, 1);

/** Boiled water for the solution: for one preparation, or for as many as are given. */
export function solutionWater(read: ReadWorkbook, preparations: Figure = one): Figure {
	return derive(boiledForSolution, {
		water: read.settings.solution_water,
		litres: litresOfPreparation(read),
		preparations,
	});
}

/** Whether rounds mix a solution, and with boiled water. */
export function isMixedWithBoiled(read: ReadWorkbook): boolean {
	return valueIn(read.settings.solution_water) === "boiled" && isMixed(read);
}
