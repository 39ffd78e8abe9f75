import type { Amounts } from "../amounts.ts";
import type { Figure } from "../calculation.ts";
import { valueIn } from "../outcome.ts";
import { chanceEnough, nextSmaller } from "./chanceEnough.ts";

/** What may come, and how surely there is to be enough of it. */
export interface Asked {
	readonly amounts: Amounts;
	readonly confidence: Figure<number>;
}

/** Of what a figure was set aside: its calculation says so, or the input that it follows from; undefined where it was not. */
export function askedOf({ origin, outcome }: Figure<unknown>): Asked | undefined {
	if (origin.kind !== "computed" || !outcome.ok) return undefined;
	const { calculation, inputs } = origin;
	const values = () =>
		Object.fromEntries(
			Object.entries(inputs).map(([key, input]) => [key, input.outcome.ok && input.outcome.value]),
		);
	if (calculation.mayCome)
		return {
			amounts: calculation.mayCome(values()),
			confidence: inputs.confidence as Figure<number>,
		};
	const { follows } = calculation;
	const from = follows && askedOf(inputs[follows.input] as Figure<unknown>);
	return from && { ...from, amounts: follows.turned(from.amounts, values()) };
}

/** What a number that is set aside promises, beside what was asked. */
export interface SetAsidePromise {
	/** Chance asked for, and the chance that the number is enough. */
	readonly asked: number;
	readonly enough: number;
	/** The next smaller amount that may come, with its own chance; undefined where none is smaller. */
	readonly less: { readonly amount: number; readonly enough: number } | undefined;
}

/** How sure a figure is to be enough; undefined where it was not set aside to be. */
export function promiseOf(figure: Figure<unknown>): SetAsidePromise | undefined {
	const from = askedOf(figure);
	const amount = valueIn(figure);
	const asked = from && valueIn(from.confidence);
	if (asked === undefined || typeof amount !== "number") return undefined;
	const { amounts } = from as Asked;
	const less = nextSmaller(amounts, amount);
	return {
		asked,
		enough: chanceEnough(amounts, amount),
		less: less === undefined ? undefined : { amount: less, enough: chanceEnough(amounts, less) },
	};
}
