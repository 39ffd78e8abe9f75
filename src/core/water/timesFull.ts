/** Minutes through which some stoves, or some pots, are taken. */
export interface TakenFor {
	readonly from: number;
	readonly to: number;
	readonly count: number;
}

/** Shorter overlaps than this, in minutes, are rounding. */
export const NEAR = 1e-6;

/** A stretch of time in which there is no room. */
interface Full {
	readonly from: number;
	readonly to: number;
}

/** When more than `most` of something is taken: stretch after stretch, earliest first. */
export function timesFull(taken: readonly TakenFor[], most: number): Full[] {
	const begins = new Moments(taken, ({ from }) => from);
	// What ends where the next begins gives it its place.
	const ends = new Moments(taken, ({ to }) => to - NEAR);
	const full: Full[] = [];
	let begun = 0;
	let now = 0;
	let since = Number.NaN;
	for (let ended = 0; ended < taken.length; ended++) {
		const to = ends.at(ended);
		for (; begun < taken.length && begins.at(begun) < to; begun++) {
			const more = begins.count(begun);
			if (now <= most && now + more > most) since = begins.at(begun);
			now += more;
		}
		const less = ends.count(ended);
		if (now > most && now - less <= most) full.push({ from: since, to });
		now -= less;
	}
	return full;
}

/** A time of each stove or pot, earliest first. */
class Moments {
	readonly #at: Float64Array;
	readonly #count: Float64Array;

	constructor(taken: readonly TakenFor[], timeOf: (one: TakenFor) => number) {
		const { length } = taken;
		const at = new Float64Array(length);
		const count = new Float64Array(length);
		// Mostly the latest were placed first: gone through backwards, each hardly moves.
		for (let i = 0; i < length; i++) {
			const one = taken[length - 1 - i] as TakenFor;
			const time = timeOf(one);
			let place = i;
			for (; place > 0 && (at[place - 1] as number) > time; place--) {
				at[place] = at[place - 1] as number;
				count[place] = count[place - 1] as number;
			}
			at[place] = time;
			count[place] = one.count;
		}
		this.#at = at;
		this.#count = count;
	}

	at(place: number): number {
		return this.#at[place] as number;
	}

	count(place: number): number {
		return this.#count[place] as number;
	}
}

/** Where the first of these stretches begins that lies within some minutes from a start on. */
export function fullWithin(
	full: readonly Full[],
	start: number,
	minutes: number,
): number | undefined {
	let [low, high] = [0, full.length];
	while (low < high) {
		const middle = (low + high) >> 1;
		if ((full[middle] as Full).to > start) high = middle;
		else low = middle + 1;
	}
	const found = full[low];
	return found && found.from < start + minutes - NEAR ? found.from : undefined;
}
