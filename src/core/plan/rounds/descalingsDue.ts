import type { Figure } from "../../calculation.ts";
import type { RoundsOfDay } from "../../rounds/roundsOfDay.ts";

/**
 * In which rounds of the plan a descaling is due, asked round by round in their order.
 *
 * It is due in the round in which the rounds done since the last one and those expected
 * of the plan reach the unit's interval; then the count begins again. Where the next round
 * that runs reaches it, that is the plan's first: any later one might be one too many.
 * Where every round that runs descales, it is due in each.
 */
export class DescalingsDue {
	readonly #every: Figure;
	#ran: number;
	#isFirst = true;

	/** @param since rounds done since the last descaling, before the plan */
	constructor(every: Figure, since: number) {
		this.#every = every;
		this.#ran = since;
	}

	at(rounds: Figure<RoundsOfDay>, index: number): boolean {
		if (!this.#every.outcome.ok || this.#every.outcome.value === 0 || !rounds.outcome.ok)
			return false;
		const every = this.#every.outcome.value;
		if (every === 1) return true;
		const before = this.#ran;
		const isNext = this.#isFirst && before + 1 >= every;
		this.#isFirst = false;
		this.#ran += -Math.expm1(-(rounds.outcome.value.kits[index] as number));
		if (this.#ran < every && !isNext) return false;
		// A descaling that was missed is due in the very next round, and once.
		this.#ran = before >= every ? 0 : this.#ran - every;
		return true;
	}
}
