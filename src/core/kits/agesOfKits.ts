import type { LaterEnds } from "./laterEnds.ts";

/** Chances below this are not followed: nobody could see them. */
export const UNSEEN = 1e-20;

/**
 * How likely it is that the oldest ready kits end on a day, and how many end with them.
 *
 * `of(end)[count]`: end in days from today (0 is today: the kits' last day), count from 1
 * to `kits`. Kits that are not the oldest are not followed one by one: how many end on each
 * later day is drawn from `LaterEnds`, the days by themselves, given how many kits there are.
 */
export class AgesOfKits {
	readonly kits: number;
	readonly ends: number;
	/** Chance that no kit is ready. */
	none = 0;
	readonly #all: Float64Array;
	/** The days in it. */
	readonly #days: readonly Float64Array[];

	constructor(kits: number, ends: number) {
		this.kits = kits;
		this.ends = ends;
		const width = kits + 1;
		const all = new Float64Array(ends * width);
		this.#all = all;
		this.#days = Array.from({ length: ends }, (_, end) =>
			all.subarray(end * width, (end + 1) * width),
		);
	}

	/** To begin with: as many of the last days as hold all kits, each day by itself. */
	static first(kits: number, ends: number, later: LaterEnds): AgesOfKits {
		const ages = new AgesOfKits(kits, ends);
		for (let end = 0; end < ends; end++) {
			let atLeast = 0;
			for (let n = kits; n >= 1; n--) {
				atLeast += later.size(end, n);
				ages.add(end, n, (later.endings(end + 1)[kits - n] as number) * atLeast);
			}
		}
		ages.times(1 / ages.total());
		return ages;
	}

	/** All of them, end by end; without that no kit is ready. */
	get chances(): Float64Array {
		return this.#all;
	}

	clear(): void {
		this.#all.fill(0);
		this.none = 0;
	}

	of(end: number): Float64Array {
		return this.#days[end] as Float64Array;
	}

	add(end: number, count: number, chance: number): void {
		const day = this.of(end);
		day[count] = (day[count] as number) + chance;
	}

	/** The next oldest, once the kits that end on `end` are gone and `others` are left. */
	addNext(end: number, others: number, later: LaterEnds, chance: number): void {
		if (others === 0) {
			this.none += chance;
			return;
		}
		const together = later.endings(end + 1)[others] as number;
		if (together === 0) {
			this.add(later.latest(end), others, chance);
			return;
		}
		let share = chance / together;
		for (let e = end + 1; e < this.ends; e++) {
			this.#addShare(e, others, later, share);
			share *= later.size(e, 0);
			if (share === 0) return;
		}
	}

	/** Of kits of which none ends before a day, `others` altogether: those whose oldest end on it. */
	#addShare(end: number, others: number, later: LaterEnds, share: number): void {
		const day = this.of(end);
		const sizes = later.sizes(end);
		const endings = later.endings(end + 1);
		for (let n = 1; n <= others; n++)
			day[n] = (day[n] as number) + share * (sizes[n] as number) * (endings[others - n] as number);
	}

	total(): number {
		const all = this.#all;
		let sum = this.none;
		for (let i = 0; i < all.length; i++) sum += all[i] as number;
		return sum;
	}

	/**
	 * Adds those of others that end on a day or later, weighed; gives back how likely they are.
	 *
	 * @param there the most kits that any of them is
	 */
	addFrom(end: number, other: AgesOfKits, there: number, weight: number): number {
		let sum = other.none;
		this.none += weight * other.none;
		for (let e = end; e < this.ends; e++) {
			const [day, others] = [this.of(e), other.of(e)];
			for (let n = 1; n <= there; n++) {
				const chance = others[n] as number;
				sum += chance;
				day[n] = (day[n] as number) + weight * chance;
			}
		}
		return sum;
	}

	/** Of several that end together on one of these days, one is gone. */
	oneFewer(from: number, to: number): void {
		for (let end = from; end <= to && end < this.ends; end++) {
			const day = this.of(end);
			day[1] = (day[1] as number) + (day[2] ?? 0);
			day.copyWithin(2, 3);
			if (this.kits > 1) day[this.kits] = 0;
		}
	}

	/** How likely several that end together are to be the oldest, on one of these days. */
	several(from: number, to: number, there: number): number {
		let sum = 0;
		for (let end = from; end <= to && end < this.ends; end++) {
			const day = this.of(end);
			for (let n = 2; n <= there; n++) sum += day[n] as number;
		}
		return sum;
	}

	/** Each chance times `factor`. */
	times(factor: number): void {
		const all = this.#all;
		for (let i = 0; i < all.length; i++) all[i] = (all[i] as number) * factor;
		this.none *= factor;
	}

	/** Where none is ready, all are in the round whose kits end on `end`. */
	allBack(end: number): void {
		this.add(end, this.kits, this.none);
		this.none = 0;
	}

	/** A day later; what ended before it is counted to its first. */
	midnight(): void {
		const [over, first] = this.#days;
		if (!over || !first) return;
		for (let n = 1; n < first.length; n++) first[n] = (first[n] as number) + (over[n] as number);
		this.#all.copyWithin(0, first.length);
		this.#days.at(-1)?.fill(0);
	}

	/** What is left after a use: of the `there` kits followed, one of the oldest is gone. */
	lessOne(there: number, later: LaterEnds, less: AgesOfKits): AgesOfKits {
		less.clear();
		less.none = this.none;
		const others = there - 1;
		// As `addNext`, for all ends at once: what is left for an end to come goes on to the one after it.
		let share = 0;
		for (let end = 0; end < this.ends; end++) {
			const [day, lessOfDay] = [this.of(end), less.of(end)];
			// Added, not set: what an earlier end leaves may have come to this one already.
			for (let n = 2; n <= there; n++)
				lessOfDay[n - 1] = (lessOfDay[n - 1] as number) + (day[n] as number);
			if (share > 0) {
				less.#addShare(end, others, later, share);
				share *= later.size(end, 0);
			}
			const last = day[1] as number;
			if (last <= UNSEEN) continue;
			const together = others === 0 ? 0 : (later.endings(end + 1)[others] as number);
			if (together === 0) less.addNext(end, others, later, last);
			else share += last / together;
		}
		return less;
	}
}
