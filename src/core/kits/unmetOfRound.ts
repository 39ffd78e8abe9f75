import { beyondEach } from "../counts/beyondEach.ts";
import { poissonTerms } from "../counts/poisson.ts";
import { minutesOf } from "../rounds/roundLength.ts";
import { cappedUses } from "./cappedUses.ts";
import type { RoundOfPlan, RoundsGoneThrough } from "./roundsGoneThrough.ts";
import type { Lapses } from "./runOfRounds.ts";

/**
 * Mean needs that find no kit ready between the start of a round and the next one, for
 * each number of kits with which it begins (0 to `kits`, those beyond count as `kits`).
 *
 * With n kits out of reach and a mean of m uses to come, E[(n + N − kits)+] − (n − kits)+
 * of them find none. While the round lasts, all its kits are out of reach; then only those
 * it could not take, and those used since it began; from midnight also those out of date.
 */
export class UnmetOfRound {
	readonly #plan: RoundsGoneThrough;
	readonly #round: RoundOfPlan;
	#most = 0;
	#whole: Float64Array = new Float64Array();
	/** By the number of kits the round takes: mean uses beyond 0, 1, … until it ends. */
	#during: Float64Array[] = [];

	constructor(plan: RoundsGoneThrough, round: RoundOfPlan) {
		this.#plan = plan;
		this.#round = round;
	}

	/** @param lapses where kits go out of date at this round's midnight */
	each(kits: number, lapses?: Lapses): Float64Array {
		this.#prepare(kits);
		const most = this.#plan.mostIn(this.#round, kits);
		const tooLate = this.#late(kits);
		const unmet = new Float64Array(kits + 1);
		for (let begins = 0; begins <= kits; begins++) {
			const taken = Math.min(begins, most);
			for (let late = 0; late < tooLate.length; late++)
				unmet[begins] =
					(unmet[begins] as number) +
					(tooLate[late] as number) * this.#unmet(kits, taken, begins - taken + late, lapses);
		}
		return unmet;
	}

	/** @param left kits that wait on while the round lasts, and after it */
	#unmet(kits: number, taken: number, left: number, lapses: Lapses | undefined): number {
		const during = this.#during[taken] as Float64Array;
		// Where none is there at all, every use is unmet.
		const unmet =
			(during[Math.max(0, kits - taken - left)] as number) +
			(this.#whole[Math.max(0, kits - left)] as number) -
			(during[Math.max(0, kits - left)] as number);
		return lapses ? unmet + this.#byLapses(kits, taken, left, lapses) : unmet;
	}

	/** How likely each number of kits is to have come too late for the round; those beyond the kits count as all. */
	#late(kits: number): Float64Array {
		const { late } = this.#round;
		return late === 0 ? Float64Array.of(1) : cappedUses(kits, poissonTerms(late));
	}

	/** Means far enough for more and more kits: the numbers of a curve are asked one after the other. */
	#prepare(kits: number): void {
		if (kits <= this.#most) return;
		this.#most = Math.max(kits, 2 * this.#most);
		const { start, next } = this.#round;
		const { uses, plan } = this.#plan;
		const most = this.#plan.mostIn(this.#round, this.#most);
		this.#whole = beyondEach(this.#most, uses.between(start, next));
		this.#during = Array.from({ length: most + 1 }, (_, taken) => {
			const ends = Math.min(next, start + minutesOf(plan.length, taken));
			return beyondEach(this.#most, uses.between(start, ends));
		});
	}

	/** What kits gone out of date at midnight add. */
	#byLapses(kits: number, taken: number, left: number, lapses: Lapses): number {
		const { start, next, midnight } = this.#round;
		const { uses, plan } = this.#plan;
		if (midnight === undefined) return 0;
		const ends = Math.max(midnight, Math.min(next, start + minutesOf(plan.length, taken)));
		const inRound = beyondEach(kits, uses.between(midnight, ends));
		const toNext = beyondEach(kits, uses.between(midnight, next));
		const meanInRound = uses.between(midnight, ends);
		const meanToNext = uses.between(midnight, next);
		const from = (away: number, beyond: Float64Array, mean: number) =>
			away <= kits ? (beyond[kits - away] as number) : mean;
		const unmet = (away: number) =>
			from(away + taken, inRound, meanInRound) +
			from(away, toNext, meanToNext) -
			from(away, inRound, meanInRound);
		let more = 0;
		for (let used = 0; used < kits; used++)
			for (let lapsed = 1; used + lapsed <= kits; lapsed++) {
				const chance = lapses[used * (kits + 1) + lapsed] as number;
				if (chance > 0) more += chance * (unmet(left + used + lapsed) - unmet(left + used));
			}
		return more;
	}
}
