import { ONE_LINE_PX } from "./rowHeights.ts";

/** So many rows are looked at in one go. */
const IN_ONE_GO = 20;

/** Heights of the rows of a long sheet: of the first ones at once, of the others when they have been looked at. */
export class GrowingHeights {
	readonly #count: number;
	readonly #heightOf: (row: number) => number;
	readonly #known: number[] = [];

	constructor(count: number, atOnce: number, heightOf: (row: number) => number) {
		this.#count = count;
		this.#heightOf = heightOf;
		this.#measureTo(atOnce);
	}

	/** As of a row of one line where it is not known. */
	of(row: number): number {
		return this.#known[row] ?? ONE_LINE_PX;
	}

	/** @returns whether there are more */
	measureOn(): boolean {
		this.#measureTo(this.#known.length + IN_ONE_GO);
		return this.#known.length < this.#count;
	}

	#measureTo(end: number): void {
		for (let row = this.#known.length; row < Math.min(end, this.#count); row++)
			this.#known.push(this.#heightOf(row));
	}
}
