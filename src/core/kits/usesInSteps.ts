import { poisson } from "../counts/poisson.ts";
import { cappedUses } from "./cappedUses.ts";
import type { RenewalStep } from "./renewalSteps.ts";

/** How likely each number of kits is to be used in a step. */
export interface UsesInStep {
	readonly all: Float64Array;
	/** Without more than are hardly ever used; enough to see where days tend to. */
	readonly likely: Float64Array;
}

/** More uses in a step than this likely count as the next smaller number. */
const HARDLY_EVER = 1e-5;

/** The uses of some kits, step by step; found once for each. */
export class UsesInSteps {
	readonly #kits: number;
	readonly #known = new Map<RenewalStep, UsesInStep>();

	constructor(kits: number) {
		this.#kits = kits;
	}

	of(step: RenewalStep): UsesInStep {
		const known = this.#known.get(step);
		if (known) return known;
		const all = cappedUses(this.#kits, poisson(step.uses));
		let most = 0;
		for (let more = 1 - (all[0] as number); more > HARDLY_EVER; most++)
			more -= all[most + 1] ?? more;
		const uses = { all, likely: cappedUses(most, { first: 0, chance: all }) };
		this.#known.set(step, uses);
		return uses;
	}
}
