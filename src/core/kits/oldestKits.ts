import { poisson } from "../counts/poisson.ts";
import { AgesOfKits } from "./agesOfKits.ts";
import { asChances } from "./asChances.ts";
import { cappedUses } from "./cappedUses.ts";
import { JoiningKits } from "./joiningKits.ts";
import { added, LaterEnds, sureNone } from "./laterEnds.ts";
import { type RenewalStep, renews } from "./renewalSteps.ts";
import type { Chain } from "./settle.ts";
import { UsesInSteps } from "./usesInSteps.ts";

/** So many uses in one step are so unlikely that what is renewed then changes nothing. */
const NEVER_USED = 1e-9;

/**
 * The oldest ready kits, followed exactly; of the others, how many end on each later day is
 * taken as if the days were apart from each other, given how many kits there are.
 *
 * Every day holds the kits that left for it, so the days' numbers come from the chain itself.
 */
export class OldestKits implements Chain {
	/** The oldest, and each later day. */
	readonly lists: number;
	readonly #kits: number;
	#ages: AgesOfKits;
	/** For each day kits end on, how likely each number is from its rounds so far. */
	readonly #later: LaterEnds;
	readonly #uses: UsesInSteps;
	readonly #joining: JoiningKits;
	/** Made once, because thousands would be thrown away: what a step ends with, and a use more or one fewer. */
	#after: AgesOfKits;
	readonly #used: readonly [AgesOfKits, AgesOfKits];
	readonly #left: Float64Array;
	/** For who does not ask what is renewed. */
	readonly #given: Float64Array;

	/** @param steps of a day, to begin with as if nothing but `extra` a step were renewed */
	constructor(kits: number, ends: number, steps: readonly RenewalStep[], extra: number) {
		this.#kits = kits;
		this.lists = 1 + ends;
		let sizes = Array.from({ length: ends }, () => sureNone(kits));
		for (let day = 0; day <= ends; day++)
			for (const { midnight, target, uses } of steps) {
				if (midnight !== "none") sizes = [...sizes.slice(1), sureNone(kits)];
				const left = cappedUses(kits, poisson(uses + extra));
				sizes = sizes.with(target, added(sizes[target] as Float64Array, left));
			}
		this.#later = new LaterEnds(kits, sizes);
		this.#ages = AgesOfKits.first(kits, ends, this.#later);
		this.#uses = new UsesInSteps(kits);
		this.#joining = new JoiningKits(kits, this.#later);
		this.#after = this.#empty();
		this.#used = [this.#empty(), this.#empty()];
		this.#left = sureNone(kits);
		this.#given = new Float64Array((kits + 1) ** 2);
	}

	chances(): Float64Array {
		const ages = this.#ages.chances;
		const all = new Float64Array(2 * ages.length);
		all.set(ages);
		this.#later.write(all.subarray(ages.length));
		return all;
	}

	goOnFrom(chances: Float64Array): void {
		const { length } = this.#ages.chances;
		this.#ages.chances.set(asChances(chances.subarray(0, length)));
		this.#later.goOnFrom(chances.subarray(length));
	}

	go(step: RenewalStep, asked?: Float64Array): Float64Array {
		const kits = this.#kits;
		const { all, likely } = this.#uses.of(step);
		const uses = asked ? all : likely;
		const given = asked ?? this.#given;
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
		for (let more = 1; u < uses.length && more > NEVER_USED; u++) {
			const there = kits - u;
			if (u > 0) layer = layer.lessOne(there + 1, this.#later, this.#used[u % 2] as AgesOfKits);
			const weight = uses[u] as number;
			more -= weight;
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
