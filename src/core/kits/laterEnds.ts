/**
 * How many kits end on each day to come, each day by itself: `size(end, n)` is the chance
 * that n do, `ending(end, n)` that n do on `end` and all later days together.
 */
export class LaterEnds {
	readonly #ends: number;
	readonly #sizes: readonly Float64Array[];
	readonly #ending: Float64Array[];

	/** @param sizes for each end, how likely each number of kits is */
	constructor(kits: number, sizes: readonly Float64Array[]) {
		this.#ends = sizes.length;
		this.#sizes = sizes;
		this.#ending = [];
		this.#ending[sizes.length] = sureNone(kits);
		for (let end = sizes.length - 1; end >= 0; end--)
			this.#ending[end] = added(sizes[end] as Float64Array, this.#ending[end + 1] as Float64Array);
	}

	size(end: number, count: number): number {
		return (this.#sizes[end] as Float64Array)[count] as number;
	}

	ending(end: number, count: number): number {
		return (this.#ending[end] as Float64Array)[count] as number;
	}

	/** The latest end on which any kit may end; `otherwise` where none is later than that. */
	latest(otherwise: number): number {
		let end = this.#ends - 1;
		while (end > otherwise && this.size(end, 0) === 1) end--;
		return end;
	}
}

/** No kit, for sure. */
export function sureNone(kits: number): Float64Array {
	const none = new Float64Array(kits + 1);
	none[0] = 1;
	return none;
}

/**
 * Chances below this count as none. Those that went on shrinking would come to numbers so
 * small (denormal) that a processor takes a hundred times as long for each.
 */
const NONE = 1e-100;

/** The sum of two counts, as far as there are kits. */
export function added(a: Float64Array, b: Float64Array): Float64Array {
	const sum = new Float64Array(a.length);
	for (let i = 0; i < a.length; i++) {
		const p = a[i] as number;
		if (p === 0) continue;
		for (let j = 0; i + j < a.length; j++)
			sum[i + j] = (sum[i + j] as number) + p * (b[j] as number);
	}
	for (let i = 0; i < sum.length; i++) if ((sum[i] as number) < NONE) sum[i] = 0;
	return sum;
}
