import type { Calculation, Figure } from "../calculation.ts";
import type { Plan } from "./plan.ts";

/**
 * Every calculation that a plan was made with, each once, in the order in which its
 * sheets show them: found by asking each cell "why?" until nothing is left to ask.
 */
export function calculationsOf(plan: Plan): Calculation[] {
	const found = new Set<Calculation>();
	const asked = new Set<Figure<unknown>>();
	const ask = (figure: Figure<unknown>) => {
		if (asked.has(figure) || figure.origin.kind !== "computed") return;
		asked.add(figure);
		found.add(figure.origin.calculation);
		for (const input of Object.values(figure.origin.inputs)) ask(input);
	};
	for (const table of Object.values(plan.tables))
		for (const row of table.rows) for (const cell of Object.values(row)) ask(cell);
	const byWords = new Map<string, Calculation>();
	for (const calculation of found) {
		const words = `${calculation.label}\u0000${calculation.formula}`;
		if (!byWords.has(words)) byWords.set(words, calculation);
	}
	return [...byWords.values()];
}
