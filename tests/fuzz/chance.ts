/** Chance that can be repeated: the same seed gives the same run (Mulberry32). */
export class Chance {
	#state: number;

	constructor(seed: number) {
		this.#state = seed >>> 0;
	}

	/** A whole number from 0 to `limit` - 1. */
	below(limit: number): number {
		this.#state = (this.#state + 0x6d2b79f5) >>> 0;
		let t = this.#state;
		t = Math.imul(t ^ (t >>> 15), t | 1);
		t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
		return Math.floor((((t ^ (t >>> 14)) >>> 0) / 2 ** 32) * limit);
	}

	/** True once in `times`. */
	once(times: number): boolean {
		return this.below(times) === 0;
	}

	/** @throws Error where there is nothing to choose from. */
	pick<T>(from: readonly T[]): T {
		if (from.length === 0) throw new Error("nothing to choose from");
		return from[this.below(from.length)] as T;
	}
}
