import type { Amounts } from "./amounts.ts";
import { answer, firstReasons, noAnswer, type Outcome } from "./outcome.ts";
import { nowhere, type Place, type Problem, problem } from "./problem.ts";
import { Refusal } from "./refusal.ts";
import { say } from "./say.ts";
import { definition, type Source } from "./source.ts";

/** What a calculation takes: a name, a unit and the limits inside which it holds. */
export interface Input {
	readonly label: string;
	readonly unit: string;
	readonly min?: number;
	readonly max?: number;
}

/** Values in, value out, and how close the tests ask the code to come. */
export interface Example<I, O> {
	readonly inputs: I;
	readonly result: O;
	readonly within: number;
}

/**
 * A formula as data and a function: what goes in, what comes out, in what unit,
 * in words, by whose authority, with one worked example that the tests run.
 */
// biome-ignore lint/suspicious/noExplicitAny: lists of calculations mix inputs of many types
export interface Calculation<I extends object = any, O = any> {
	readonly key: string;
	readonly label: string;
	readonly unit: string;
	/** The formula in words. */
	readonly formula: string;
	readonly source: Source;
	/** How the result is rounded; absent where it is not. */
	readonly rounding?: string;
	/** What can hurt someone, said where the number is. */
	readonly caution?: string;
	readonly inputs: { readonly [K in keyof I]: Input };
	/** Worked by hand, not by the program. */
	readonly example?: Example<I, O>;
	/** Of what is set aside to be enough: how likely each amount is that may come. */
	mayCome?(inputs: I): Amounts;
	/** Of what follows from something set aside: from which input, and what its amounts become. */
	readonly follows?: Follows<I>;
	compute(inputs: I): O | Refusal;
}

interface Follows<I> {
	readonly input: keyof I & string;
	turned(amounts: Amounts, inputs: I): Amounts;
}

/** A calculation with its example: all but a list of other figures have one. */
export type Worked<I extends object, O> = Calculation<I, O> & { readonly example: Example<I, O> };

export function calculation<I extends object, O>(definition: Worked<I, O>): Worked<I, O> {
	return definition;
}

/** Where a figure comes from, so that it can be asked "why?". */
export type Origin =
	| { readonly kind: "typed"; readonly place: Place }
	| { readonly kind: "default"; readonly place: Place }
	/** A date or a name that only says which row this is. */
	| { readonly kind: "name" }
	| ComputedOrigin;

interface ComputedOrigin {
	readonly kind: "computed";
	readonly calculation: Calculation;
	readonly inputs: Named<unknown>;
}

/** Figures, each under the name it has where someone asks "why?". */
type Named<T> = Readonly<Record<string, Figure<T>>>;

/** A value (or the reason there is none) that knows where it comes from. */
export interface Figure<T = number> {
	readonly label: string;
	readonly unit: string;
	readonly outcome: Outcome<T>;
	readonly origin: Origin;
}

type Figures<I extends object> = { readonly [K in keyof I]: Figure<I[K]> };

/**
 * Runs a calculation on figures.
 *
 * Where an input has no value, or lies outside the calculation's limits, the
 * result has none either and carries the problems. A result that is NaN or
 * infinite is a mistake in this program and throws.
 */
export function derive<I extends object, O>(
	definition: Calculation<I, O>,
	inputs: Figures<I>,
	place: Place = nowhere,
): Figure<O> {
	const { label, unit } = definition;
	return {
		label,
		unit,
		outcome: evaluate(definition, inputs, place),
		origin: { kind: "computed", calculation: definition, inputs: inputs as never },
	};
}

function evaluate<I extends object, O>(
	definition: Calculation<I, O>,
	inputs: Figures<I>,
	place: Place,
): Outcome<O> {
	const values: Partial<Record<keyof I, unknown>> = {};
	const problems: Problem[] = [];
	for (const key in definition.inputs) {
		const { outcome, origin } = inputs[key];
		if (!outcome.ok) {
			problems.push(...outcome.problems);
			continue;
		}
		values[key] = outcome.value;
		const wrong = outsideLimits(definition, definition.inputs[key], outcome.value);
		if (wrong) problems.push(problem(placeOf(origin, place), wrong));
	}
	if (problems.length > 0) return noAnswer(...firstReasons(problems));
	const result = definition.compute(values as I);
	if (result instanceof Refusal)
		return noAnswer(
			...result.reasons.map(({ place: own, ...words }) => problem(own ?? place, words)),
		);
	if (typeof result === "number" && !Number.isFinite(result))
		throw new Error(`program error: ${definition.key} gave ${result}`);
	return answer(result);
}

function placeOf(origin: Origin, otherwise: Place): Place {
	return "place" in origin ? origin.place : otherwise;
}

function outsideLimits(definition: Calculation, input: Input, value: unknown) {
	if (typeof value !== "number") return undefined;
	const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY, label } = input;
	if (value >= min && value <= max) return undefined;
	const allowed = numberWithin(min, max);
	return {
		code: "outside-limits",
		received: String(value),
		allowed,
		message: say`${label} is ${value}; ${definition.label} needs ${allowed}.`,
	};
}

function numberWithin(min: number, max: number): string {
	if (max === Number.POSITIVE_INFINITY) return say`a number of at least ${min}`;
	if (min === Number.NEGATIVE_INFINITY) return say`a number of at most ${max}`;
	return say`a number from ${min} to ${max}`;
}

/** A figure that a person typed. */
export function typedFigure<T>(label: string, unit: string, value: T, place: Place): Figure<T> {
	return { label, unit, outcome: answer(value), origin: { kind: "typed", place } };
}

/** A figure whose typed text could not be understood. */
export function refusedFigure(
	label: string,
	unit: string,
	place: Place,
	...problems: readonly Problem[]
): Figure<never> {
	return { label, unit, outcome: noAnswer(...problems), origin: { kind: "typed", place } };
}

/** A figure nobody typed: the format's default stands. */
export function defaultFigure<T>(label: string, unit: string, value: T, place: Place): Figure<T> {
	return { label, unit, outcome: answer(value), origin: { kind: "default", place } };
}

/** A date or name at the head of a row. */
export function nameFigure<T>(label: string, value: T): Figure<T> {
	return { label, unit: "", outcome: answer(value), origin: { kind: "name" } };
}

/** Several figures as one list; it has no value unless they all have one. */
export function gather<T>(label: string, unit: string, figures: Named<T>): Figure<T[]> {
	return listOf(label, unit, allOf(Object.values(figures)), () => figures);
}

/**
 * A list of very many figures: they and their names are put together only when
 * someone asks "why?".
 */
export function listOf<T>(
	label: string,
	unit: string,
	outcome: Outcome<T[]>,
	named: () => Named<T>,
): Figure<T[]> {
	return { label, unit, outcome, origin: new ListOrigin(label, unit, named) };
}

/** The values of all figures, or the problems of those that have none. */
export function allOf<T>(figures: readonly Figure<T>[]): Outcome<T[]> {
	const values: T[] = [];
	const problems: Problem[] = [];
	for (const { outcome } of figures)
		if (outcome.ok) values.push(outcome.value);
		else problems.push(...outcome.problems);
	return problems.length > 0 ? noAnswer(...firstReasons(problems)) : answer(values);
}

class ListOrigin implements ComputedOrigin {
	readonly kind = "computed";
	readonly #label: string;
	readonly #unit: string;
	readonly #named: () => Named<unknown>;

	constructor(label: string, unit: string, named: () => Named<unknown>) {
		this.#label = label;
		this.#unit = unit;
		this.#named = named;
	}

	get inputs(): Named<unknown> {
		return this.#named();
	}

	get calculation(): Calculation {
		const inputs = this.inputs;
		return {
			key: "list",
			label: this.#label,
			unit: this.#unit,
			formula: say`Each of them in turn.`,
			source: definition,
			inputs,
			compute: (values) => Object.keys(inputs).map((key) => values[key]),
		};
	}
}
