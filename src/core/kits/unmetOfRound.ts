import { poissonTerms } from "../counts/poisson.ts";
import { minutesOf } from "../rounds/roundLength.ts";
import { cappedUses } from "./cappedUses.ts";
import type { RoundOfPlan, RoundsGoneThrough } from "./roundsGoneThrough.ts";
import type { Lapses } from "./runOfRounds.ts";
import { UnmetByLapses } from "./unmetByLapses.ts";
import { beyondOf, usesBeyond } from "./usesBeyond.ts";

/**
 * Mean needs that find no kit ready between the start of a round and the next one, for
 * a number of kits with which it begins (0 to `kits`, those beyond count as `kits`).
 *
 * With n kits out of reach and a mean of m uses to come, E[(n + N − kits)+] − (n − kits)+
 * of them find none. While the round lasts, all its kits are out of reach; then only those
 * it could not take, and those used since it began; from midnight also those out of date.
 */
export class UnmetOfRound {
	readonly #plan: RoundsGoneThrough;
	readonly #round: RoundOfPlan;
	readonly #whole: Float64Array;
	/** By the kits it takes: mean uses beyond 0, 1, … until the round ends. */
	readonly #during: Float64Array[] = [];

	constructor(plan: RoundsGoneThrough, round: RoundOfPlan) {
		this.#plan = plan;
		this.#round = round;
		this.#whole = usesBeyond(plan.uses.between(round.start, round.next));
	}

	/**
	 * By the number of kits with which it begins, each worked out when it is asked for.
	 *
	 * @param lapses where kits go out of date at this round's midnight
	 */
	each(kits: number, lapses?: Lapses): (begins: number) => number {
		const most = this.#plan.mostIn(this.#round, kits);
		const tooLate = this.#late(kits);
		const byLapses = lapses && new UnmetByLapses(kits, this.#plan, this.#round, lapses);
		const known: number[] = [];
		const unmetWith = (begins: number) => {
			const taken = Math.min(begins, most);
			let unmet = 0;
			for (let late = 0; late < tooLate.length; late++) {
				const chance = tooLate[late] as number;
				if (chance === 0) continue;
				const left = begins - taken + late;
				const more = byLapses ? byLapses.more(taken, left) : 0;
				unmet += chance * (this.#unmet(kits, taken, left) + more);
			}
			return unmet;
		};
		return (begins) => {
			known[begins] ??= unmetWith(begins);
			return known[begins];
		};
	}

	/** @param left kits that wait on while the round lasts, and after it */
	#unmet(kits: number, taken: number, left: number): number {
		const during = this.#untilReady(taken);
		// Where none is there at all, every use is unmet.
		const there = Math.max(0, kits - left);
		return (
			beyondOf(during, Math.max(0, there - taken)) +
			beyondOf(this.#whole, there) -
			beyondOf(during, there)
		);
	}

	/** How likely each number of kits is to have come too late for the round; those beyond the kits count as all. */
	#late(kits: number): Float64Array {
		const { late } = this.#round;
		return late === 0 ? noneLate : cappedUses(kits, poissonTerms(late));
	}

	#untilReady(taken: number): Float64Array {
		const known = this.#during[taken];
		if (known) return known;
		const { start, next } = this.#round;
		const ends = Math.min(next, start + minutesOf(this.#plan.plan.length, taken));
		const during = usesBeyond(this.#plan.uses.between(start, ends));
		this.#during[taken] = during;
		return during;
	}
}

const noneLate = Float64Array.of(1);
