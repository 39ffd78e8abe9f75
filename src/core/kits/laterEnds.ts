/**
 * How many kits end on each day to come, each day by itself: `size(end, n)` is the chance
 * that n do, `ending(end, n)` that n do on `end` and all later days together.
 */
export class LaterEnds {
	readonly #ends: number;
	#sizes: Float64Array[];
	#ending: Float64Array[];
	/** For the next sum: thousands of them are made in a second. */
	#free: Float64Array;

	/** @param sizes for each end, how likely each number of kits is */
	constructor(kits: number, sizes: readonly Float64Array[]) {
		this.#ends = sizes.length;
		this.#sizes = [...sizes];
		this.#ending = Array.from({ length: sizes.length + 1 }, () => sureNone(kits));
		this.#free = sureNone(kits);
		this.#addUp(sizes.length - 1);
	}

	size(end: number, count: number): number {
		return (this.#sizes[end] as Float64Array)[count] as number;
	}

	/** How likely each number is to end on a day. */
	sizes(end: number): Float64Array {
		return this.#sizes[end] as Float64Array;
	}

	/** How likely each number is to end on a day or later. */
	endings(end: number): Float64Array {
		return this.#ending[end] as Float64Array;
	}

	/** The latest end on which any kit may end; `otherwise` where none is later than that. */
	latest(otherwise: number): number {
		let end = this.#ends - 1;
		while (end > otherwise && this.size(end, 0) === 1) end--;
		return end;
	}

	/**
	 * How likely several that end together are to be the oldest of some kits, on a day up to
	 * `last`, where none of them ends by `end`.
	 */
	several(end: number, last: number, kits: number): number {
		const together = this.endings(end + 1)[kits] as number;
		if (together === 0) return kits > 1 && this.latest(end) <= last ? 1 : 0;
		let share = 1 / together;
		let sum = 0;
		for (let e = end + 1; e <= last && e < this.#ends; e++) {
			const [sizes, endings] = [this.sizes(e), this.endings(e + 1)];
			for (let n = 2; n <= kits; n++)
				sum += share * (sizes[n] as number) * (endings[kits - n] as number);
			share *= sizes[0] as number;
		}
		return sum;
	}

	/** A day later: the first day is over, and none ends on the last one yet. */
	midnight(): void {
		for (const days of [this.#sizes, this.#ending]) {
			const [over] = days.splice(0, 1) as [Float64Array];
			over.fill(0);
			over[0] = 1;
			days.push(over);
		}
	}

	/** Writes how likely each number is to end on each day, one day after the other. */
	write(chances: Float64Array): void {
		this.#sizes.forEach((sizes, end) => {
			chances.set(sizes, end * sizes.length);
		});
	}

	/** Takes them from what was written so; those below none count as none. A day's are not one altogether: sums beyond the kits are cut off. */
	goOnFrom(chances: Float64Array): void {
		const width = this.#free.length;
		this.#sizes.forEach((sizes, end) => {
			for (let n = 0; n < width; n++) sizes[n] = Math.max(0, chances[end * width + n] as number);
		});
		this.#addUp(this.#ends - 1);
	}

	/** More kits will end on a day, as many as are this likely. */
	more(end: number, kits: Float64Array): void {
		const before = this.#sizes[end] as Float64Array;
		this.#sizes[end] = added(before, kits, this.#free);
		this.#free = before;
		this.#addUp(end);
	}

	/** How many end on a day or later, for each up to this one. */
	#addUp(last: number): void {
		for (let end = last; end >= 0; end--)
			added(this.sizes(end), this.endings(end + 1), this.endings(end));
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

/**
 * The sum of two counts, as far as there are kits.
 *
 * @param sum what it is written into
 */
export function added(
	a: Float64Array,
	b: Float64Array,
	sum: Float64Array = new Float64Array(a.length),
): Float64Array {
	sum.fill(0);
	for (let i = 0; i < a.length; i++) {
		const p = a[i] as number;
		if (p === 0) continue;
		for (let j = 0; i + j < a.length; j++)
			sum[i + j] = (sum[i + j] as number) + p * (b[j] as number);
	}
	for (let i = 0; i < sum.length; i++) if ((sum[i] as number) < NONE) sum[i] = 0;
	return sum;
}
