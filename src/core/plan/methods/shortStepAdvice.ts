import { problemsOf, valueIn } from "../../outcome.ts";
import { advice, type Problem } from "../../problem.ts";
import { isDoneFor, type LoadSize } from "../../rounds/loads.ts";
import type { Step } from "../../rounds/step.ts";
import { say } from "../../say.ts";
import { stepsSheet } from "../../sheets/steps.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { pieceFire } from "./pieceFire.ts";

/** Where pieces are boiled or steamed: a pot that is too small, and steps too short for it. */
export function shortStepAdvice({ steps, loads, read }: UnitFigures): Problem[] {
	const list = valueIn(steps);
	if (!list || list.length === 0) return [];
	return (valueIn(loads) ?? []).flatMap((load) => {
		const { method } = load;
		if (method === "chlorine") return [];
		const { fire } = pieceFire(read, method);
		const known = valueIn(fire);
		if (!known) return problemsOf(fire.outcome).filter(({ code }) => code === "pot-too-small");
		const held = waitsOf(list, load);
		return [
			...tooShort(method, held, known.holdMinutes),
			...heatingLeftOut(method, held, known.heatMinutes, known.holdMinutes),
		];
	});
}

/** Minutes of each step of a load. */
function waitsOf(steps: readonly Step[], load: LoadSize): number[] {
	return steps
		.filter((step) => step.basis === "load" && isDoneFor(load, step.method))
		.map(({ minutes }) => minutes);
}

const place = { file: stepsSheet.file, line: null, column: "minutes" };

function tooShort(
	method: "boiling" | "steam",
	held: readonly number[],
	shortest: number,
): Problem[] {
	if (held.some((minutes) => minutes >= shortest)) return [];
	return [
		advice(place, {
			code: method === "boiling" ? "short-boil" : "short-steam",
			received:
				held.length === 0 ? say`no step counted by load` : say`${Math.max(...held)} minutes`,
			allowed: say`at least ${shortest} minutes`,
			message:
				method === "boiling"
					? say`No step counted by load keeps pieces at a rolling boil for ${shortest} minutes; look at the steps of a round.`
					: say`No step counted by load keeps pieces in steam for ${shortest} minutes; look at the steps of a round.`,
		}),
	];
}

/** The time counts from the boil: what comes before it is part of the round too. */
function heatingLeftOut(
	method: "boiling" | "steam",
	held: readonly number[],
	heatMinutes: number,
	holdMinutes: number,
): Problem[] {
	const given = held.reduce((sum, minutes) => sum + minutes, 0);
	const needed = Math.ceil(heatMinutes + holdMinutes);
	if (held.length === 0 || given >= needed) return [];
	return [
		advice(place, {
			code: "heating-left-out",
			received: say`${given} minutes a load`,
			allowed: say`at least ${needed} minutes a load`,
			message:
				method === "boiling"
					? say`The steps of a load that is boiled last ${given} minutes together. With this stove the water takes about ${Math.ceil(heatMinutes)} minutes to a rolling boil, and ${holdMinutes} count from then: the round lasts longer than planned. Give the heating a step of its own, or light the stove before the load goes in.`
					: say`The steps of a load that is steamed last ${given} minutes together. With this stove steam comes after about ${Math.ceil(heatMinutes)} minutes, and ${holdMinutes} count from then: the round lasts longer than planned. Give the heating a step of its own, or light the stove before the load goes in.`,
		}),
	];
}
