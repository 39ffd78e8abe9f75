import { beyondAsFarAs } from "../counts/beyondEach.ts";
import { minutesOf } from "../rounds/roundLength.ts";
import type { RoundOfPlan, RoundsGoneThrough } from "./roundsGoneThrough.ts";
import type { Lapses } from "./runOfRounds.ts";

/**
 * Mean needs that find no kit ready, until the next round begins, only because kits went out
 * of date at the midnight after a round: as many fewer are ready from then on.
 */
export class UnmetByLapses {
	readonly #kits: number;
	readonly #round: RoundOfPlan;
	readonly #plan: RoundsGoneThrough;
	/** By how much each number of kits away at midnight is likelier than by uses alone. */
	readonly #likelier: Float64Array;
	/** Those numbers of which it is: with many kits few. */
	readonly #away: readonly number[];
	/** Mean uses beyond 0, 1, … from midnight to the next round. */
	readonly #toNext: Float64Array;
	/** The same to the end of a round, with the time for which it was found last. */
	#inRound: Float64Array;
	#ends: number | undefined;

	constructor(kits: number, plan: RoundsGoneThrough, round: RoundOfPlan, lapses: Lapses) {
		this.#kits = kits;
		this.#round = round;
		this.#plan = plan;
		this.#likelier = likelierAway(kits, lapses);
		this.#away = [...this.#likelier.keys()].filter((more) => this.#likelier[more] !== 0);
		this.#inRound = this.#toNext = this.#beyondUntil(round.next);
	}

	/** @param taken kits in the round; @param left those that wait on */
	more(taken: number, left: number): number {
		const kits = this.#kits;
		if (left >= kits) return 0;
		const toNext = this.#toNext;
		const inRound = this.#untilReady(taken);
		let sum = 0;
		for (const more of this.#away) {
			const likelier = this.#likelier[more] as number;
			// With all away every use is unmet; more than all cannot be.
			const there = Math.max(0, kits - left - more);
			const outOfRound = Math.max(0, there - taken);
			sum +=
				likelier *
				((inRound[outOfRound] as number) + (toNext[there] as number) - (inRound[there] as number));
		}
		return sum;
	}

	#untilReady(taken: number): Float64Array {
		const { start, next, midnight = next } = this.#round;
		const ready = Math.min(next, start + minutesOf(this.#plan.plan.length, taken));
		const ends = Math.max(midnight, ready);
		if (ends !== this.#ends) this.#inRound = this.#beyondUntil(ends);
		this.#ends = ends;
		return this.#inRound;
	}

	#beyondUntil(end: number): Float64Array {
		const { midnight = end } = this.#round;
		return beyondAsFarAs(this.#kits, this.#plan.uses.between(midnight, end));
	}
}

function likelierAway(kits: number, { used, given }: Lapses): Float64Array {
	const likelier = new Float64Array(kits + 1);
	for (let u = 0; u < kits; u++) {
		const likely = used[u] as number;
		if (likely === 0) continue;
		const { first, chance } = given(u);
		for (let i = first === 0 ? 1 : 0; i < chance.length; i++) {
			const both = likely * (chance[i] as number);
			likelier[u + first + i] = (likelier[u + first + i] as number) + both;
			likelier[u] = (likelier[u] as number) - both;
		}
	}
	return likelier;
}
