import { MOST_RESULTS } from "./remembered.ts";

/** What follows one input: the next input's branches, at the end the result. */
type Branch = Map<unknown, unknown>;

/**
 * Work that gives the same result object for the same inputs as lately.
 *
 * Inputs are the same where they are one object, or equal numbers or texts; a list of
 * one is the same where its member is. What builds on the result finds it the same in
 * turn, so that the days of a plan that are alike cost one day's work. Only for pure
 * work whose results nobody changes.
 */
export function alike<I extends object, V>(
	keys: readonly (keyof I)[],
	work: (inputs: I) => V,
): (inputs: I) => V {
	const before = keys.slice(0, -1);
	const last = keys.at(-1) as keyof I;
	let results: Branch = new Map();
	let count = 0;
	return (inputs) => {
		let branch = results;
		for (const key of before) branch = branchOf(branch, same(inputs[key]));
		const end = same(inputs[last]);
		const known = branch.get(end) as V | undefined;
		if (known !== undefined) return known;
		const result = work(inputs);
		branch.set(end, result);
		if (++count === MOST_RESULTS) {
			results = new Map();
			count = 0;
		}
		return result;
	};
}

function same(input: unknown): unknown {
	return Array.isArray(input) && input.length === 1 ? input[0] : input;
}

function branchOf(branch: Branch, input: unknown): Branch {
	const known = branch.get(input) as Branch | undefined;
	if (known) return known;
	const next: Branch = new Map();
	branch.set(input, next);
	return next;
}
