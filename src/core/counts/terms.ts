import { TAIL } from "./counts.ts";

/** Relative to the most likely count, terms below this cannot be seen in any result. */
export const SMALLEST_TERM = TAIL * 1e-3;

/** Terms on one side of the most likely count, in a list that is kept: a new one each time would be much to tidy up. */
export class Terms {
	terms = new Float64Array(256);
	count = 0;

	begin(): void {
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
