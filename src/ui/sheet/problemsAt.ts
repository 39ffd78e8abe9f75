import type { Problem } from "../../core/problem.ts";

/** Looks up the problems of one file by line and column; column "" finds those of a whole line. */
export function problemsAt(
	problems: readonly Problem[],
	file: string,
): (line: number | null, column: string) => readonly Problem[] {
	const byPlace = new Map<string, Problem[]>();
	for (const problem of problems) {
		if (problem.file !== file) continue;
		const place = `${problem.line}|${problem.column}`;
		byPlace.set(place, [...(byPlace.get(place) ?? []), problem]);
	}
	return (line, column) => byPlace.get(`${line}|${column}`) ?? [];
}
