import { poisson } from "../counts/poisson.ts";
import { AgesOfKits, UNSEEN } from "./agesOfKits.ts";
import { cappedUses } from "./cappedUses.ts";
import { added, LaterEnds, sureNone } from "./laterEnds.ts";
import { NEVER, type RenewalStep } from "./renewalSteps.ts";

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
	readonly #ends: number;
	#ages: AgesOfKits;
	/** For each day kits end on, how likely each number is from its rounds so far. */
	#sizes: Float64Array[];
	#later: LaterEnds;
	/** Of `#joined`, whose results are used before it is asked again. */
	readonly #scratch: AgesOfKits[] = [];

	/** @param steps of a day, to begin with as if nothing but `extra` a step were renewed */
	constructor(kits: number, ends: number, steps: readonly RenewalStep[], extra: number) {
		this.#kits = kits;
		this.#ends = ends;
		this.#sizes = Array.from({ length: ends }, () => sureNone(kits));
		for (let day = 0; day <= ends; day++)
			for (const { midnight, target, uses } of steps) {
				if (midnight !== "none") this.#midnight();
				this.#left(target, cappedUses(kits, poisson(uses + extra)));
			}
		this.#later = new LaterEnds(kits, this.#sizes);
		this.#ages = AgesOfKits.first(kits, ends, this.#later);
	}

	/** Fills `given` (see `RenewalsOfDay`); gives back how likely each number of uses was. */
	go(step: RenewalStep, given: Float64Array): Float64Array {
		const kits = this.#kits;
		const uses = cappedUses(kits, poisson(step.uses));
		const ages = new AgesOfKits(kits, this.#ends);
		const left = new Float64Array(kits + 1);
		if (step.midnight === "before") {
			this.#midnight();
			this.#ages = this.#ages.dayLater();
			this.#later = new LaterEnds(kits, this.#sizes);
		}
		given.fill(0);
		let layer = this.#ages;
		let u = 0;
		for (let likely = 1; u <= kits && likely > NEVER_USED; u++) {
			const weight = uses[u] as number;
			likely -= weight;
			this.#joined(layer, u, step).forEach((after, x) => {
				const chance = after.total();
				given[u * (kits + 1) + x] = chance;
				left[u + x] = (left[u + x] as number) + weight * chance;
				ages.addAll(after, weight);
			});
			if (u < kits) layer = layer.lessOne(kits - u, this.#later);
		}
		for (; u <= kits; u++) given[u * (kits + 1)] = 1;
		if (step.midnight === "after") this.#midnight();
		this.#ages = step.midnight === "after" ? ages.dayLater() : ages;
		this.#ages.allBack(step.target);
		this.#left(step.target, left);
		this.#later = new LaterEnds(kits, this.#sizes);
		return uses;
	}

	#midnight(): void {
		this.#sizes = [...this.#sizes.slice(1), sureNone(this.#kits)];
	}

	/** A round's kits will end on a day, as many as are this likely. */
	#left(end: number, kits: Float64Array): void {
		this.#sizes = this.#sizes.with(end, added(this.#sizes[end] as Float64Array, kits));
	}

	/** An empty one that is made once: thousands a day would be thrown away. */
	#cleared(x: number): AgesOfKits {
		this.#scratch[x] ??= new AgesOfKits(this.#kits, this.#ends);
		this.#scratch[x].clear();
		return this.#scratch[x];
	}

	/** The oldest kits once others have joined a round, by how many did. */
	#joined(ages: AgesOfKits, used: number, { endsBy, spreadBy }: RenewalStep): AgesOfKits[] {
		if (spreadBy === NEVER && endsBy === NEVER) return [ages];
		const kits = this.#kits;
		const by: AgesOfKits[] = [];
		const into = (x: number) => {
			by[x] ??= this.#cleared(x);
			return by[x];
		};
		into(0).addAll(ages, 1);
		for (let end = 0; end <= endsBy && end < ages.ends; end++)
			for (let x = 0; x <= kits - used; x++)
				for (let n = 1; n <= kits - used - x; n++) {
					const chance = by[x]?.take(end, n) ?? 0;
					if (chance > UNSEEN) into(x + n).addNext(end, kits - used - x - n, this.#later, chance);
				}
		for (let end = Math.max(0, endsBy + 1); end <= spreadBy && end < ages.ends; end++)
			for (let x = kits - used - 2; x >= 0; x--)
				for (let n = 2; n <= kits - used - x; n++) {
					const chance = by[x]?.take(end, n) ?? 0;
					if (chance > UNSEEN) into(x + 1).add(end, n - 1, chance);
				}
		return by;
	}
}
