import { poisson } from "../counts/poisson.ts";
import { AgesOfKits } from "./agesOfKits.ts";
import { cappedUses } from "./cappedUses.ts";
import { JoiningKits } from "./joiningKits.ts";
import { added, LaterEnds, sureNone } from "./laterEnds.ts";
import { type RenewalStep, renews } from "./renewalSteps.ts";

/** So many uses in one step are so unlikely that what is renewed then changes nothing. */
const NEVER_USED = 1e-9;

/**
 * The oldest ready kits, followed exactly; of the others, how many end on each later day is
 * taken as if the days were apart from each other, given how many kits there are.
 *
 * Every day holds the kits that left for it, so the days' numbers come from the chain itself.
 */
export class OldestKits {
	readonly #kits: number;
	#ages: AgesOfKits;
	/** For each day kits end on, how likely each number is from its rounds so far. */
	readonly #later: LaterEnds;
	/** How likely each number of uses is in each step of a day. */
	readonly #uses: Map<RenewalStep, Float64Array>;
	readonly #joining: JoiningKits;
	/** Made once, because thousands would be thrown away: what a step ends with, and a use more or one fewer. */
	#after: AgesOfKits;
	readonly #used: readonly [AgesOfKits, AgesOfKits];
	readonly #left: Float64Array;

	/** @param steps of a day, to begin with as if nothing but `extra` a step were renewed */
	constructor(kits: number, ends: number, steps: readonly RenewalStep[], extra: number) {
		this.#kits = kits;
		let sizes = Array.from({ length: ends }, () => sureNone(kits));
		for (let day = 0; day <= ends; day++)
			for (const { midnight, target, uses } of steps) {
				if (midnight !== "none") sizes = [...sizes.slice(1), sureNone(kits)];
				const left = cappedUses(kits, poisson(uses + extra));
				sizes = sizes.with(target, added(sizes[target] as Float64Array, left));
			}
		this.#later = new LaterEnds(kits, sizes);
		this.#ages = AgesOfKits.first(kits, ends, this.#later);
		this.#uses = new Map(steps.map((step) => [step, cappedUses(kits, poisson(step.uses))]));
		this.#joining = new JoiningKits(kits, this.#later);
		this.#after = this.#empty();
		this.#used = [this.#empty(), this.#empty()];
		this.#left = sureNone(kits);
	}

	/** Fills `given` (see `RenewalsOfDay`) where any are renewed; gives back how likely each number of uses was. */
	go(step: RenewalStep, given: Float64Array): Float64Array {
		const kits = this.#kits;
		const uses = this.#uses.get(step) as Float64Array;
		const after = this.#after;
		const left = this.#left.fill(0);
		after.clear();
		if (step.midnight === "before") this.#midnight(this.#ages);
		const renewing = renews(step);
		if (renewing) {
			given.fill(0);
			this.#joining.begin(step);
		}
		let layer = this.#ages;
		let u = 0;
		for (let likely = 1; u <= kits && likely > NEVER_USED; u++) {
			const there = kits - u;
			if (u > 0) layer = layer.lessOne(there + 1, this.#later, this.#used[u % 2] as AgesOfKits);
			const weight = uses[u] as number;
			likely -= weight;
			if (!renewing) {
				const chance = after.addFrom(0, layer, there, weight);
				left[u] = (left[u] as number) + weight * chance;
				continue;
			}
			const row = given.subarray(u * (kits + 1), (u + 1) * (kits + 1));
			this.#joining.join(step, layer, there, weight, row, after);
			for (let x = 0; x <= there; x++)
				left[u + x] = (left[u + x] as number) + weight * (row[x] as number);
		}
		for (; renewing && u <= kits; u++) given[u * (kits + 1)] = 1;
		if (renewing) this.#joining.end(step, after);
		if (step.midnight === "after") this.#midnight(after);
		after.allBack(step.target);
		this.#after = this.#ages;
		this.#ages = after;
		this.#later.more(step.target, left);
		return uses;
	}

	#midnight(ages: AgesOfKits): void {
		ages.midnight();
		this.#later.midnight();
	}

	#empty(): AgesOfKits {
		return new AgesOfKits(this.#kits, this.#ages.ends);
	}
}
