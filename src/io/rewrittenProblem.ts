import { advice, type Problem } from "../core/problem.ts";
import type { Rewritten } from "../core/read/block/blockTable.ts";
import { say } from "../core/say.ts";

/** That cells were written by the custom of another program, with an example, so that a person sees how they were read. */
export function rewrittenProblem(rewritten: readonly Rewritten[]): Problem[] {
	const [first] = rewritten;
	if (!first) return [];
	const { place, text, clear } = first;
	return [
		advice(place, {
			code: "rewritten",
			received: text,
			allowed: clear,
			message:
				rewritten.length === 1
					? say`“${text}” was read as ${clear}, and stands so now.`
					: say`${rewritten.length} numbers and dates were written the way another program writes them and stand in the form of the workbook now, for example “${text}” as ${clear}.`,
		}),
	];
}
