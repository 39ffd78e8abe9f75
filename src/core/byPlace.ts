import type { Problem } from "./problem.ts";

/** By file, then line, then column; what concerns no single place comes first. */
export function byPlace(one: Problem, other: Problem): number {
	return (
		compare(one.file, other.file) ||
		(one.line ?? 0) - (other.line ?? 0) ||
		compare(one.column, other.column)
	);
}

function compare(one: string, other: string): number {
	return one < other ? -1 : Number(one > other);
}
