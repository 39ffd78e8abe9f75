import type { Counts } from "../counts/counts.ts";
import { passingSum } from "../counts/passingSum.ts";

/** How likely each amount used so far is, in a list that is kept from round to round. */
export class FollowedAmounts {
	#first = 0;
	#end = 0;
	#chance = new Float64Array(64);

	/** Surely nothing. */
	begin(): void {
		this.#end = 1;
		this.#chance[0] = 1;
	}

	/** So far it may be this way at all. */
	get isPossible(): boolean {
		return this.#end > this.#first;
	}

	get counts(): Counts {
		return { first: this.#first, chance: this.#chance.subarray(this.#first, this.#end) };
	}

	/** Only with this chance is it still so. */
	weigh(by: number): void {
		for (let i = this.#first; i < this.#end; i++)
			this.#chance[i] = (this.#chance[i] as number) * by;
	}

	/** It may also be what was followed there with an amount added; as `plus`. */
	come(from: FollowedAmounts, amount: Counts, most: number): void {
		if (from.isPossible) this.add(passingSum(from.counts, amount, most));
	}

	/** It may also be so. */
	add(counts: Counts): void {
		this.addPart(counts, 1, 0);
	}

	/** With a chance it may also be so with an amount added, which is shared between two whole ones as `moved` does. */
	addPart({ first, chance }: Counts, by: number, more: number): void {
		if (by === 0) return;
		const whole = Math.floor(more);
		const above = more - whole;
		const from = first + whole;
		const end = from + chance.length + (above > 0 ? 1 : 0);
		if (!this.isPossible) this.#first = this.#end = from;
		this.#roomTo(end);
		const all = this.#chance;
		if (above === 0)
			for (let i = 0; i < chance.length; i++)
				all[from + i] = (all[from + i] as number) + (chance[i] as number) * by;
		else {
			let shared = 0;
			for (let i = 0; i < chance.length; i++) {
				const p = (chance[i] as number) * by;
				all[from + i] = (all[from + i] as number) + (shared + p * (1 - above));
				shared = p * above;
			}
			all[end - 1] = (all[end - 1] as number) + shared;
		}
		this.#first = Math.min(this.#first, from);
		this.#end = Math.max(this.#end, end);
	}

	#roomTo(end: number): void {
		if (end <= this.#chance.length) return;
		const wider = new Float64Array(Math.max(end, 2 * this.#chance.length));
		wider.set(this.#chance);
		this.#chance = wider;
	}
}
