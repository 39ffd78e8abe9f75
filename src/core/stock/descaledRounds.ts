import type { Spectrum } from "../counts/spectra.ts";

/** Rounds that are alike. */
export interface AlikeRounds {
	readonly times: number;
	/** Chance that one of them does not run. */
	readonly idle: number;
}

/**
 * What rounds and their descalings come to at one point of their generating function: amounts
 * that add up multiply there, so that only how many have run since the last descaling is kept apart.
 */
export class DescaledRounds {
	readonly #times: Int32Array;
	readonly #idle: Float64Array;
	readonly #sinceRe: Float64Array;
	readonly #sinceIm: Float64Array;

	/** @param every rounds that run from one descaling to the next */
	constructor(kinds: readonly AlikeRounds[], every: number) {
		this.#times = Int32Array.from(kinds, ({ times }) => times);
		this.#idle = Float64Array.from(kinds, ({ idle }) => idle);
		this.#sinceRe = new Float64Array(every);
		this.#sinceIm = new Float64Array(every);
	}

	/**
	 * Finds the value at a point and writes it there, in place of that of a descaling.
	 *
	 * All in one piece and in lists: numbers given from call to call would be much to tidy up.
	 *
	 * @param running of a round of each kind that runs, `each` points after the other
	 * @param descaling of one
	 * @param weights of not running, for each kind
	 */
	findAt(
		at: number,
		running: Spectrum & { readonly each: number },
		descaling: Spectrum,
		weights = this.#idle,
	): void {
		const re = this.#sinceRe;
		const im = this.#sinceIm;
		const last = re.length - 1;
		re.fill(0);
		im.fill(0);
		re[0] = 1;
		// None is further from the last descaling than there were rounds.
		let furthest = 0;
		for (let kind = 0; kind < this.#times.length; kind++) {
			const a = running.re[at + kind * running.each] as number;
			const b = running.im[at + kind * running.each] as number;
			const [c, d] = [descaling.re[at] as number, descaling.im[at] as number];
			const descaledA = a * c - b * d;
			const descaledB = a * d + b * c;
			const still = weights[kind] as number;
			for (let left = this.#times[kind] as number; left > 0; left--) {
				const firstRe: number = re[0] as number;
				const firstIm: number = im[0] as number;
				const lastRe = re[last] as number;
				const lastIm = im[last] as number;
				furthest = Math.min(furthest + 1, last);
				for (let since = furthest; since > 1; since--) {
					const x = re[since - 1] as number;
					const y = im[since - 1] as number;
					re[since] = still * (re[since] as number) + a * x - b * y;
					im[since] = still * (im[since] as number) + a * y + b * x;
				}
				// The first round after a descaling, which where each has one is also the last.
				const first = Math.min(1, last);
				re[0] = still * firstRe + (last === 0 ? 0 : a * lastRe - b * lastIm);
				im[0] = still * firstIm + (last === 0 ? 0 : a * lastIm + b * lastRe);
				const kept = last === 0 ? 1 : still;
				re[first] = kept * (re[first] as number) + descaledA * firstRe - descaledB * firstIm;
				im[first] = kept * (im[first] as number) + descaledA * firstIm + descaledB * firstRe;
			}
		}
		let [sumRe, sumIm] = [0, 0];
		for (let since = 0; since <= furthest; since++) {
			sumRe += re[since] as number;
			sumIm += im[since] as number;
		}
		descaling.re[at] = sumRe;
		descaling.im[at] = sumIm;
	}
}
