import { type Counts, TAIL } from "./counts.ts";

/** Relative to the most likely count, terms below this cannot be seen in any result. */
export const SMALLEST_TERM = TAIL * 1e-3;

/** Longer lists are rare, and would be kept for nothing. */
const MOST_KEPT = 65_536;

/** Terms on one side of the most likely count, in a list that is kept: a new one each time would be much to tidy up. */
export class TermsOutwards {
	terms = new Float64Array(256);
	count = 0;

	begin(): void {
		if (this.terms.length > MOST_KEPT) this.terms = new Float64Array(256);
		this.count = 0;
	}

	add(term: number): void {
		if (this.count === this.terms.length) {
			const wider = new Float64Array(2 * this.count);
			wider.set(this.terms);
			this.terms = wider;
		}
		this.terms[this.count++] = term;
	}

	sumFrom(start: number): number {
		let sum = start;
		for (let i = 0; i < this.count; i++) sum += this.terms[i] as number;
		return sum;
	}
}

/** How likely each number is, from what it is beside the most likely one: those below and above it. */
export function scaled(mode: number, below: TermsOutwards, above: TermsOutwards): Counts {
	const sum = above.sumFrom(below.sumFrom(1));
	const chance = new Float64Array(below.count + 1 + above.count);
	for (let i = 0; i < below.count; i++)
		chance[below.count - 1 - i] = (below.terms[i] as number) / sum;
	chance[below.count] = 1 / sum;
	for (let i = 0; i < above.count; i++)
		chance[below.count + 1 + i] = (above.terms[i] as number) / sum;
	return { first: mode - below.count, chance };
}
