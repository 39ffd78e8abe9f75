import { poisson } from "../counts/poisson.ts";
import { AgesOfKits, UNSEEN } from "./agesOfKits.ts";
import { cappedUses } from "./cappedUses.ts";
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
	/** Made once, because thousands would be thrown away: what a step ends with, a use more or one fewer, and `#joined`. */
	#after: AgesOfKits;
	readonly #used: readonly [AgesOfKits, AgesOfKits];
	readonly #by: AgesOfKits[] = [];
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
		if (renewing) given.fill(0);
		let layer = this.#ages;
		let u = 0;
		for (let likely = 1; u <= kits && likely > NEVER_USED; u++) {
			if (u > 0) layer = layer.lessOne(kits - u + 1, this.#later, this.#used[u % 2] as AgesOfKits);
			const weight = uses[u] as number;
			likely -= weight;
			this.#joined(layer, u, step).forEach((ages, x) => {
				const chance = ages.total();
				if (renewing) given[u * (kits + 1) + x] = chance;
				left[u + x] = (left[u + x] as number) + weight * chance;
				after.addAll(ages, weight);
			});
		}
		for (; renewing && u <= kits; u++) given[u * (kits + 1)] = 1;
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

	#cleared(x: number): AgesOfKits {
		this.#by[x] ??= this.#empty();
		this.#by[x].clear();
		return this.#by[x];
	}

	/** The oldest kits once others have joined a round, by how many did. */
	#joined(ages: AgesOfKits, used: number, step: RenewalStep): AgesOfKits[] {
		if (!renews(step)) return [ages];
		const { endsBy, spreadBy } = step;
		const kits = this.#kits;
		const by: AgesOfKits[] = [];
		const into = (x: number) => {
			by[x] ??= this.#cleared(x);
			return by[x];
		};
		into(0).addAll(ages, 1);
		for (let end = 0; end <= endsBy && end < ages.ends; end++)
			for (let x = 0; x <= kits - used; x++) {
				const day = by[x]?.of(end);
				for (let n = 1; day && n <= kits - used - x; n++) {
					const chance = day[n] as number;
					day[n] = 0;
					if (chance > UNSEEN) into(x + n).addNext(end, kits - used - x - n, this.#later, chance);
				}
			}
		for (let end = Math.max(0, endsBy + 1); end <= spreadBy && end < ages.ends; end++)
			for (let x = kits - used - 2; x >= 0; x--) {
				const day = by[x]?.of(end);
				for (let n = 2; day && n <= kits - used - x; n++) {
					const chance = day[n] as number;
					day[n] = 0;
					if (chance > UNSEEN) into(x + 1).add(end, n - 1, chance);
				}
			}
		return by;
	}
}
