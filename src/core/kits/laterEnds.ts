/**
 * How many kits end on each day to come, each day by itself: `size(end, n)` is the chance
 * that n do, `ending(end, n)` that n do on `end` and all later days together.
 */
export class LaterEnds {
	readonly #kits: number;
	readonly #ends: number;
	readonly #size: Float64Array;
	readonly #ending: Float64Array;

	/** @param parts for each end, how likely each number of kits is from each of its rounds */
	constructor(kits: number, parts: readonly (readonly Float64Array[])[]) {
		this.#kits = kits;
		this.#ends = parts.length;
		const width = kits + 1;
		this.#size = new Float64Array(parts.length * width);
		this.#ending = new Float64Array((parts.length + 1) * width);
		this.#ending[parts.length * width] = 1;
		for (let end = parts.length - 1; end >= 0; end--) {
			const size = this.#size.subarray(end * width, (end + 1) * width);
			size[0] = 1;
			for (const part of parts[end] as readonly Float64Array[]) size.set(added(size, part));
			const after = this.#ending.subarray((end + 1) * width, (end + 2) * width);
			this.#ending.set(added(size, after), end * width);
		}
	}

	size(end: number, count: number): number {
		return this.#size[end * (this.#kits + 1) + count] as number;
	}

	ending(end: number, count: number): number {
		return this.#ending[end * (this.#kits + 1) + count] as number;
	}

	/** The latest end on which any kit may end; `otherwise` where none is later than that. */
	latest(otherwise: number): number {
		let end = this.#ends - 1;
		while (end > otherwise && this.size(end, 0) === 1) end--;
		return end;
	}
}

/** The sum of two counts, as far as there are kits. */
export function added(a: Float64Array, b: Float64Array): Float64Array {
	const sum = new Float64Array(a.length);
	for (let i = 0; i < a.length; i++) {
		const p = a[i] as number;
		if (p === 0) continue;
		for (let j = 0; i + j < a.length; j++)
			sum[i + j] = (sum[i + j] as number) + p * (b[j] as number);
	}
	return sum;
}
