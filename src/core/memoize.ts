import type { Calculation, Worked } from "./calculation.ts";

/** Results kept at most; then all are let go and worked out again as they are asked for. */
export const MOST_RESULTS = 4096;

/** Results by what they hang on, one thing after the other. Most branches lead on by one input only, which needs no map. */
class Branch<V> {
	result: V | undefined;
	#input: unknown;
	#only: Branch<V> | undefined;
	#others: Map<unknown, Branch<V>> | undefined;

	to(input: unknown): Branch<V> {
		if (this.#only && this.#input === input) return this.#only;
		const known = this.#others?.get(input);
		if (known) return known;
		const next = new Branch<V>();
		if (!this.#only) {
			this.#input = input;
			this.#only = next;
		} else {
			this.#others ??= new Map();
			this.#others.set(input, next);
		}
		return next;
	}
}

/**
 * A function that does not work out again what it worked out lately.
 *
 * Inputs are the same where they are one object, or equal numbers or texts; a list of
 * one is the same where its member is. The same inputs give the same result object, so
 * what builds on it finds it the same in turn: the days of a plan that are alike cost
 * one day's work, and an edit leaves most of them as they were. Only for pure functions
 * whose results nobody changes.
 *
 * @param hangsOn all that the result hangs on, in an order of its own for each length; the inputs where left out
 * @param most results kept; fewer where they are large
 */
export function memoize<I extends readonly unknown[], V>(
	work: (...inputs: I) => V,
	hangsOn: (...inputs: I) => readonly unknown[] = (...inputs) => inputs,
	most = MOST_RESULTS,
): (...inputs: I) => V {
	let root = new Branch<V>();
	let count = 0;
	return (...inputs) => {
		let branch = root;
		const all = hangsOn(...inputs);
		for (let i = 0; i < all.length; i++) {
			const input = all[i];
			branch = branch.to(Array.isArray(input) && input.length === 1 ? input[0] : input);
		}
		if (branch.result !== undefined) return branch.result;
		const result = work(...inputs);
		branch.result = result;
		if (++count === most) {
			root = new Branch();
			count = 0;
		}
		return result;
	};
}

/** The same calculation, worked out once for all days on which its inputs are the same. */
export function memoized<I extends object, O>(of: Calculation<I, O>): Calculation<I, O> {
	const keys = Object.keys(of.inputs) as (keyof I)[];
	return { ...of, compute: memoize(of.compute, (inputs) => keys.map((key) => inputs[key])) };
}

/** Objects known at once, of those with much behind them. */
export const MOST_OBJECTS = 256;

/**
 * The same calculation, which gives one object for inputs that are alike in every part:
 * what is remembered by the object (`memoizeByObject`) is found again after edits elsewhere,
 * and for all kinds of kit that are alike.
 *
 * @param nameOf a text that is the same only for inputs that are alike
 */
export function sameObject<I extends object, O extends object>(
	of: Worked<I, O>,
	nameOf: (inputs: I) => readonly unknown[],
): Worked<I, O> {
	return { ...of, compute: memoize(of.compute, nameOf, MOST_OBJECTS) };
}

/**
 * A function of an immutable object that keeps its last result for each.
 *
 * What an edit left alone is the same object as before, so its result is too, as long as
 * the other inputs are; it is let go together with the object. Only for pure functions
 * whose results nobody changes.
 */
export function memoizeByObject<K extends object, R extends readonly unknown[], V>(
	work: (of: K, ...others: R) => V,
): (of: K, ...others: R) => V {
	const results = new WeakMap<K, { readonly others: R; readonly value: V }>();
	return (of, ...others) => {
		const known = results.get(of);
		if (known && others.every((other, at) => other === known.others[at])) return known.value;
		const value = work(of, ...others);
		results.set(of, { others, value });
		return value;
	};
}
