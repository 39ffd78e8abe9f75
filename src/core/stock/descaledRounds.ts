/** Rounds that are alike. */
export interface AlikeRounds {
	readonly times: number;
	/** Chance that one of them does not run. */
	readonly idle: number;
}

/** Values of what the rounds of each kind use when they run: of the kind k at `at + k × each`. */
interface ValuesOfKinds {
	readonly re: Float64Array;
	readonly im: Float64Array;
	readonly each: number;
}

/**
 * What rounds and their descalings come to at one point of their generating function: amounts
 * that add up multiply there, so that only how many have run since the last descaling is kept apart.
 */
export class DescaledRounds {
	/** The value that was found, a complex number. */
	re = 0;
	im = 0;
	readonly #kinds: readonly AlikeRounds[];
	readonly #sinceRe: Float64Array;
	readonly #sinceIm: Float64Array;

	/** @param every rounds that run from one descaling to the next */
	constructor(kinds: readonly AlikeRounds[], every: number) {
		this.#kinds = kinds;
		this.#sinceRe = new Float64Array(every);
		this.#sinceIm = new Float64Array(every);
	}

	/**
	 * Finds the value from those of the kinds and that of a descaling.
	 *
	 * @param weights of not running, for each kind; its chance where left out
	 */
	find(
		{ re, im, each }: ValuesOfKinds,
		at: number,
		descalingRe: number,
		descalingIm: number,
		weights?: Float64Array,
	): void {
		this.#begin();
		for (let kind = 0, before = 0; kind < this.#kinds.length; kind++) {
			const { times, idle } = this.#kinds[kind] as AlikeRounds;
			const a = re[at + kind * each] as number;
			const b = im[at + kind * each] as number;
			const descaledA = a * descalingRe - b * descalingIm;
			const descaledB = a * descalingIm + b * descalingRe;
			const still = weights ? (weights[kind] as number) : idle;
			for (let round = 0; round < times; round++)
				this.#add(still, a, b, descaledA, descaledB, ++before);
		}
		this.#addUp();
	}

	#begin(): void {
		this.#sinceRe.fill(0);
		this.#sinceIm.fill(0);
		this.#sinceRe[0] = 1;
	}

	/** One round more; none is further from the last descaling than there were rounds. */
	#add(
		still: number,
		a: number,
		b: number,
		descaledA: number,
		descaledB: number,
		rounds: number,
	): void {
		const re = this.#sinceRe;
		const im = this.#sinceIm;
		const last = re.length - 1;
		const [lastRe, lastIm] = [re[last] as number, im[last] as number];
		for (let since = Math.min(rounds, last); since > 1; since--) {
			const x = re[since - 1] as number;
			const y = im[since - 1] as number;
			re[since] = still * (re[since] as number) + a * x - b * y;
			im[since] = still * (im[since] as number) + a * y + b * x;
		}
		const [x, y] = [re[0] as number, im[0] as number];
		if (last === 0) {
			re[0] = still * x + descaledA * x - descaledB * y;
			im[0] = still * y + descaledA * y + descaledB * x;
			return;
		}
		re[1] = still * (re[1] as number) + descaledA * x - descaledB * y;
		im[1] = still * (im[1] as number) + descaledA * y + descaledB * x;
		re[0] = still * x + a * lastRe - b * lastIm;
		im[0] = still * y + a * lastIm + b * lastRe;
	}

	#addUp(): void {
		this.re = 0;
		this.im = 0;
		for (let since = 0; since < this.#sinceRe.length; since++) {
			this.re += this.#sinceRe[since] as number;
			this.im += this.#sinceIm[since] as number;
		}
	}
}
