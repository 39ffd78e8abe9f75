import type { Place, Problem } from "./problem.ts";

/** What a refusal says: the words of a problem, and its place where the calculation knows it. */
export type RefusalWords = Pick<Problem, "code" | "received" | "allowed" | "message"> & {
	readonly place?: Place;
};

/** A calculation's own word that it has no answer, and why. */
export class Refusal {
	readonly reasons: readonly RefusalWords[];

	constructor(reasons: readonly RefusalWords[]) {
		this.reasons = reasons;
	}
}

export function refuse(...reasons: readonly RefusalWords[]): Refusal {
	return new Refusal(reasons);
}
