import type { Counts } from "../counts/counts.ts";
import type { AlikeUse } from "./alikeUses.ts";
import { DescaledRounds } from "./descaledRounds.ts";

/** Minus the logarithm of a chance, about 1e-18, that nobody sees in any result. */
const NEVER = 41;
/** A bound is found after a few halvings; more would say that no number is large enough to hold it. */
const MOST_HALVINGS = 30;

/**
 * Amounts between which the use of rounds with descalings hardly ever is not (Chernoff's bounds):
 * far from all that is possible, where every round would have as many kits as it can.
 */
export class BoundsOfUse {
	readonly #kinds: readonly AlikeUse[];
	readonly #perDescale: number;
	readonly #every: number;
	readonly #means: readonly number[];
	#mean = 0;
	#variance: number;
	readonly #rounds: DescaledRounds;
	readonly #values: { readonly re: Float64Array; readonly im: Float64Array; readonly each: 1 };
	readonly #weights: Float64Array;

	constructor(kinds: readonly AlikeUse[], perDescale: number, every: number) {
		this.#kinds = kinds;
		this.#perDescale = perDescale;
		this.#every = every;
		// It only tells where to look first, so about one descaling more or less is near enough.
		this.#variance = perDescale * perDescale;
		this.#means = kinds.map(({ times, running }) => {
			const { mean, variance } = momentsOf(running);
			this.#mean += times * mean;
			this.#variance += times * variance;
			return mean;
		});
		this.#rounds = new DescaledRounds(kinds, every);
		const none = () => new Float64Array(kinds.length);
		this.#values = { re: none(), im: none(), each: 1 };
		this.#weights = none();
	}

	/** More is hardly ever used. */
	get most(): number {
		let most = this.#possible();
		let by = Math.sqrt((2 * NEVER) / this.#variance);
		for (let halvings = 0; halvings < MOST_HALVINGS; halvings++, by /= 2) {
			const bound = this.#mean + (this.#logRaised(by) + NEVER) / by;
			if (bound < most) most = bound;
			else if (Number.isFinite(bound)) break;
		}
		return Math.max(0, Math.ceil(most));
	}

	/** Whether so little is hardly ever used. */
	isMoreThan(amount: number): boolean {
		const beyond = this.#mean - amount;
		const by = beyond / this.#variance;
		return [by / 2, by, 2 * by].some(
			(each) => each > 0 && this.#logRaised(-each) - each * beyond < -NEVER,
		);
	}

	#possible(): number {
		let amount = 0;
		let rounds = 0;
		for (const { times, running } of this.#kinds) {
			amount += times * (running.first + running.chance.length - 1);
			rounds += times;
		}
		return amount + Math.ceil(rounds / this.#every) * Math.ceil(this.#perDescale);
	}

	/** Logarithm of the mean of e^(by × (use − its mean)). */
	#logRaised(by: number): number {
		this.#kinds.forEach(({ running, idle }, kind) => {
			const mean = this.#means[kind] as number;
			this.#values.re[kind] = raised(running, by, mean);
			this.#weights[kind] = idle * Math.exp(-by * mean);
		});
		const value = { re: Float64Array.of(Math.exp(by * this.#perDescale)), im: new Float64Array(1) };
		this.#rounds.findAt(0, this.#values, value, this.#weights);
		return Math.log(value.re[0] as number);
	}
}

/** The mean of e^(by × (amount − about)). */
function raised({ first, chance }: Counts, by: number, about: number): number {
	const step = Math.exp(by);
	let factor = Math.exp(by * (first - about));
	let sum = 0;
	for (let i = 0; i < chance.length; i++) {
		sum += (chance[i] as number) * factor;
		factor *= step;
	}
	return sum;
}

function momentsOf({ first, chance }: Counts): { mean: number; variance: number } {
	let mean = 0;
	let squares = 0;
	for (let i = 0; i < chance.length; i++) {
		const amount = first + i;
		mean += (chance[i] as number) * amount;
		squares += (chance[i] as number) * amount * amount;
	}
	return { mean, variance: squares - mean * mean };
}
