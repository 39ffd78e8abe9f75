import { type AgesOfKits, UNSEEN } from "./agesOfKits.ts";
import type { LaterEnds } from "./laterEnds.ts";
import type { RenewalStep } from "./renewalSteps.ts";

/**
 * The kits that join a round although nobody used them, after each number of uses, and the
 * oldest of those that are left.
 *
 * Of kits of which none ends by a day, on which day the next ones end goes by their number
 * alone (`LaterEnds`). So only their number is followed from day to day, and they are laid
 * out over the days once for all uses of a step.
 */
export class JoiningKits {
	readonly #kits: number;
	readonly #later: LaterEnds;
	/** By the kits that joined: how likely they are, if none of the others ends by the last day looked at. */
	#joined: Float64Array;
	#next: Float64Array;
	/** By the kits left: how likely they are, weighed by the uses before. */
	readonly #left: Float64Array;
	/** By the kits left: how likely one of them joins too, because several end together. */
	readonly #spread: Float64Array;

	constructor(kits: number, later: LaterEnds) {
		this.#kits = kits;
		this.#later = later;
		this.#joined = new Float64Array(kits + 1);
		this.#next = new Float64Array(kits + 1);
		this.#left = new Float64Array(kits + 1);
		this.#spread = new Float64Array(kits + 1);
	}

	begin({ endsBy, spreadBy }: RenewalStep): void {
		this.#left.fill(0);
		if (endsBy < 0) return;
		for (let others = 0; others <= this.#kits; others++)
			this.#spread[others] = this.#later.several(endsBy, spreadBy, others);
	}

	/**
	 * Fills `row` with how likely each number is to join, and adds to `after` what is left of
	 * the oldest, weighed; the rest follows with `end`.
	 */
	join(
		{ endsBy, spreadBy }: RenewalStep,
		ages: AgesOfKits,
		there: number,
		weight: number,
		row: Float64Array,
		after: AgesOfKits,
	): void {
		row.fill(0);
		const staying = after.addFrom(endsBy + 1, ages, there, weight);
		const several = ages.several(endsBy + 1, spreadBy, there);
		row[0] = staying - several;
		if (several > 0) row[1] = several;
		const joined = this.#ending(ages, there, endsBy);
		for (let x = 1; x <= there; x++) {
			const chance = joined[x] as number;
			if (chance === 0) continue;
			const others = there - x;
			const oneMore = chance * (this.#spread[others] as number);
			row[x] = (row[x] as number) + chance - oneMore;
			if (oneMore > 0) row[x + 1] = (row[x + 1] as number) + oneMore;
			this.#left[others] = (this.#left[others] as number) + weight * chance;
		}
	}

	/** Lays out those that are left. */
	end({ endsBy, spreadBy }: RenewalStep, after: AgesOfKits): void {
		this.#left.forEach((chance, others) => {
			if (chance > 0) after.addNext(endsBy, others, this.#later, chance);
		});
		after.oneFewer(endsBy + 1, spreadBy);
	}

	/** How likely each number is to end by a day. */
	#ending(ages: AgesOfKits, there: number, endsBy: number): Float64Array {
		this.#joined.fill(0);
		for (let end = 0; end <= endsBy; end++) {
			if (end > 0) this.#alsoEnding(end, there);
			const day = ages.of(end);
			for (let n = 1; n <= there; n++) {
				const chance = day[n] as number;
				if (chance > UNSEEN) this.#joined[n] = (this.#joined[n] as number) + chance;
			}
		}
		return this.#joined;
	}

	/** Of those left, none of which ends before a day, as many as end on it join too. */
	#alsoEnding(end: number, there: number): void {
		const [before, after] = [this.#joined, this.#next.fill(0)];
		const [sizes, later] = [this.#later.sizes(end), this.#later.endings(end + 1)];
		for (let x = 1; x <= there; x++) {
			const chance = before[x] as number;
			if (chance === 0) continue;
			const others = there - x;
			const together = this.#later.endings(end)[others] as number;
			if (together === 0 || others === 0) {
				const at = others > 0 && this.#later.latest(end - 1) === end ? there : x;
				after[at] = (after[at] as number) + chance;
				continue;
			}
			for (let n = 0; n <= others; n++)
				after[x + n] =
					(after[x + n] as number) +
					(chance * (sizes[n] as number) * (later[others - n] as number)) / together;
		}
		this.#joined = after;
		this.#next = before;
	}
}
