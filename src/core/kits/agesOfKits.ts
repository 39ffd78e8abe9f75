import type { LaterEnds } from "./laterEnds.ts";

/** Chances below this are not followed: nobody could see them. */
export const UNSEEN = 1e-20;

/**
 * How likely it is that the oldest ready kits end on a day, and how many end with them.
 *
 * `at(end, count)`: end in days from today (0 is today: the kits' last day), count from 1
 * to `kits`. Kits that are not the oldest are not followed one by one: how many end on each
 * later day is drawn from `LaterEnds`, the days by themselves, given how many kits there are.
 */
export class AgesOfKits {
	readonly kits: number;
	readonly ends: number;
	/** Chance that no kit is ready. */
	none = 0;
	readonly #chance: Float64Array;

	constructor(kits: number, ends: number) {
		this.kits = kits;
		this.ends = ends;
		this.#chance = new Float64Array(ends * (kits + 1));
	}

	/** To begin with: as many of the last days as hold all kits, each day by itself. */
	static first(kits: number, ends: number, later: LaterEnds): AgesOfKits {
		const ages = new AgesOfKits(kits, ends);
		for (let end = 0; end < ends; end++) {
			let atLeast = 0;
			for (let n = kits; n >= 1; n--) {
				atLeast += later.size(end, n);
				ages.add(end, n, later.ending(end + 1, kits - n) * atLeast);
			}
		}
		return ages.times(1 / ages.total());
	}

	clear(): void {
		this.#chance.fill(0);
		this.none = 0;
	}

	at(end: number, count: number): number {
		return this.#chance[end * (this.kits + 1) + count] as number;
	}

	add(end: number, count: number, chance: number): void {
		const i = end * (this.kits + 1) + count;
		this.#chance[i] = (this.#chance[i] as number) + chance;
	}

	/** The chance at a place, which is then empty. */
	take(end: number, count: number): number {
		const i = end * (this.kits + 1) + count;
		const chance = this.#chance[i] as number;
		this.#chance[i] = 0;
		return chance;
	}

	/** The next oldest, once the kits that end on `end` are gone and `others` are left. */
	addNext(end: number, others: number, later: LaterEnds, chance: number): void {
		if (others === 0) {
			this.none += chance;
			return;
		}
		const together = later.ending(end + 1, others);
		if (together === 0) {
			this.add(later.latest(end), others, chance);
			return;
		}
		let share = chance / together;
		for (let e = end + 1; e < this.ends; e++) {
			for (let n = 1; n <= others; n++)
				this.add(e, n, share * later.size(e, n) * later.ending(e + 1, others - n));
			share *= later.size(e, 0);
			if (share === 0) return;
		}
	}

	total(): number {
		let sum = this.none;
		for (let i = 0; i < this.#chance.length; i++) sum += this.#chance[i] as number;
		return sum;
	}

	addAll(other: AgesOfKits, weight: number): void {
		for (let i = 0; i < this.#chance.length; i++)
			this.#chance[i] = (this.#chance[i] as number) + weight * (other.#chance[i] as number);
		this.none += weight * other.none;
	}

	/** The same, each chance times `factor`. */
	times(factor: number): AgesOfKits {
		const product = new AgesOfKits(this.kits, this.ends);
		product.addAll(this, factor);
		return product;
	}

	/** Where none is ready, all are in the round whose kits end on `end`. */
	allBack(end: number): void {
		this.add(end, this.kits, this.none);
		this.none = 0;
	}

	/** A day later; what ended before it is counted to its first. */
	dayLater(): AgesOfKits {
		const later = new AgesOfKits(this.kits, this.ends);
		for (let end = 0; end < this.ends; end++)
			for (let n = 1; n <= this.kits; n++) later.add(Math.max(0, end - 1), n, this.at(end, n));
		later.none = this.none;
		return later;
	}

	/** After a use: of the `there` kits followed, one of the oldest is gone. */
	lessOne(there: number, later: LaterEnds): AgesOfKits {
		const less = new AgesOfKits(this.kits, this.ends);
		less.none = this.none;
		const others = there - 1;
		// As `addNext`, for all ends at once: what is left for an end to come goes on to the one after it.
		let share = 0;
		for (let end = 0; end < this.ends; end++) {
			for (let n = 2; n <= there; n++) less.add(end, n - 1, this.at(end, n));
			if (share > 0) {
				for (let n = 1; n <= others; n++)
					less.add(end, n, share * later.size(end, n) * later.ending(end + 1, others - n));
				share *= later.size(end, 0);
			}
			const last = this.at(end, 1);
			if (last <= UNSEEN) continue;
			const together = others === 0 ? 0 : later.ending(end + 1, others);
			if (together === 0) less.addNext(end, others, later, last);
			else share += last / together;
		}
		return less;
	}
}
