import { logChance } from "./negativeBinomial.ts";

/** Up to this count, factors one by one are faster than an expansion. */
const FEW = 40;
/** A product outside these is taken over into the logarithm, before it leaves what a number can hold. */
const SMALL = 1e-100;
const LARGE = 1e100;

/**
 * Logarithm of the chance that several negative binomial counts all come as they did: the
 * sum of their `logChance`, with one logarithm a count instead of five.
 */
export class ChancesTogether {
	#log = 0;
	#product = 1;

	/** @param meanCount above 0 */
	add(count: number, size: number, meanCount: number): void {
		const share = meanCount / (size + meanCount);
		let product = this.#product;
		for (let i = 0; i < count && i < FEW; i++) product *= ((size + i) * share) / (i + 1);
		if (count > FEW || !(product > SMALL * SMALL)) {
			this.#log += logChance(count, size, meanCount);
			return;
		}
		this.#log -= size * Math.log1p(meanCount / size);
		this.#product = product;
		if (product < SMALL || product > LARGE) {
			this.#log += Math.log(product);
			this.#product = 1;
		}
	}

	get log(): number {
		return this.#log + Math.log(this.#product);
	}
}
