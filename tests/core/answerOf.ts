import {
	type Calculation,
	derive,
	type Figure,
	refusedFigure,
	typedFigure,
} from "../../src/core/calculation.ts";
import type { Outcome } from "../../src/core/outcome.ts";
import { nowhere, type Problem, problem } from "../../src/core/problem.ts";

/** A figure somebody typed. */
export function figure<T>(value: T, label = "Figure"): Figure<T> {
	return typedFigure(label, "", value, nowhere);
}

/** A figure without a value, because of a problem of the code given. */
export function missing(code: string): Figure<never> {
	const words = { code, received: "", allowed: "", message: `${code}.` };
	return refusedFigure("Figure", "", nowhere, problem(nowhere, words));
}

/** What a calculation makes of plain inputs, limits checked: a value or problems. */
export function outcomeOf<I extends object, O>(
	calculation: Calculation<I, O>,
	inputs: I,
): Outcome<O> {
	const figures = Object.fromEntries(
		Object.entries(inputs).map(([key, value]) => [key, figure(value, key)]),
	);
	return derive(calculation, figures as { [K in keyof I]: Figure<I[K]> }).outcome;
}

/** The value a calculation gives; a refusal fails the test. */
export function answerOf<I extends object, O>(calculation: Calculation<I, O>, inputs: I): O {
	const outcome = outcomeOf(calculation, inputs);
	if (outcome.ok) return outcome.value;
	throw new Error(
		`${calculation.key} gave no answer: ${outcome.problems.map((p) => p.message).join(" ")}`,
	);
}

/** The problems for which a calculation gives no value; a value fails the test. */
export function refusalOf<I extends object, O>(
	calculation: Calculation<I, O>,
	inputs: I,
): readonly Problem[] {
	const outcome = outcomeOf(calculation, inputs);
	if (!outcome.ok) return outcome.problems;
	throw new Error(
		`${calculation.key} should have refused, and gave ${JSON.stringify(outcome.value)}`,
	);
}
