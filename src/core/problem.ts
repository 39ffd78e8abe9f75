/**
 * Something a person has to put right, or should know, said in words.
 *
 * Problems are data: they are collected, shown beside the cell they speak of,
 * and written to problems.csv. They are never thrown.
 */
export interface Problem {
	/** Stable name of the kind of problem, for example "bad-cell". */
	readonly code: string;
	/** "error": a number cannot be given. "advice": the numbers stand, but look here. */
	readonly weight: "error" | "advice";
	/** File of the workbook, "" where no single file is meant. */
	readonly file: string;
	/** Line of that file, the header being line 1; null where no single line is meant. */
	readonly line: number | null;
	/** Column key, "" where no single column is meant. */
	readonly column: string;
	/** What was found, as it was typed. */
	readonly received: string;
	/** What is allowed, in words. */
	readonly allowed: string;
	/** The whole problem in one sentence a nurse understands. */
	readonly message: string;
}

/** Where a problem is. */
export type Place = Pick<Problem, "file" | "line" | "column">;

export const nowhere: Place = { file: "", line: null, column: "" };

type Words = Pick<Problem, "code" | "received" | "allowed" | "message">;

/** A problem that leaves a number without an answer. */
export function problem(place: Place, words: Words): Problem {
	return { weight: "error", ...place, ...words };
}

/** A remark: the numbers stand, but the reader should know. */
export function advice(place: Place, words: Words): Problem {
	return { weight: "advice", ...place, ...words };
}

/** Identity of a problem, to list each one once. */
export function problemKey(p: Problem): string {
	return [p.code, p.file, p.line, p.column, p.received, p.message].join("\u0000");
}

/** Each problem once, in the order first met. */
export function distinct(problems: readonly Problem[]): Problem[] {
	return [...new Map(problems.map((p) => [problemKey(p), p])).values()];
}
