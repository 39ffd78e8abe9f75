import { NOISE } from "./convolved.ts";
import type { Counts } from "./counts.ts";
import { withoutTails } from "./passingSum.ts";
import { transform, turns } from "./transform.ts";

/** A count transformed, up to half a turn: the rest is its mirror. */
export interface Spectrum {
	readonly re: Float64Array;
	readonly im: Float64Array;
}

/** Those of several counts, one after the other. */
export interface Spectra extends Spectrum {
	/** Values of each. */
	readonly each: number;
}

/** Where they are worked out: new lists each time would be much to tidy up. */
let rooms = [0, 0, 0, 0].map(() => new Float64Array(0)) as Rooms;
type Rooms = [Float64Array, Float64Array, Float64Array, Float64Array];

/**
 * The Fourier transforms of counts, two at a time: amounts that add up multiply there. In lists
 * that the next ones will write over.
 *
 * @param length beyond which no sum of them comes, a power of two
 */
export function spectraOf(all: readonly Counts[], length: number): Spectra {
	const half = length / 2;
	const each = half + 1;
	roomFor(all.length * each, length);
	const [spectraRe, spectraIm] = rooms;
	const re = rooms[2].subarray(0, length);
	const im = rooms[3].subarray(0, length);
	for (let one = 0; one < all.length; one += 2) {
		place(all[one], re);
		place(all[one + 1], im);
		transform(re, im);
		const hasOther = one + 1 < all.length;
		for (let turn = 0; turn <= half; turn++) {
			const back = turn === 0 ? 0 : length - turn;
			const at = one * each + turn;
			const x = re[turn] as number;
			const y = im[turn] as number;
			const u = re[back] as number;
			const v = im[back] as number;
			spectraRe[at] = (x + u) / 2;
			spectraIm[at] = (y - v) / 2;
			if (!hasOther) continue;
			spectraRe[at + each] = (y + v) / 2;
			spectraIm[at + each] = (u - x) / 2;
		}
	}
	return { re: spectraRe, im: spectraIm, each };
}

function roomFor(values: number, length: number): void {
	rooms = rooms.map((room, i) => {
		const wanted = i < 2 ? values : length;
		return room.length < wanted ? new Float64Array(wanted) : room;
	}) as Rooms;
}

/** What goes beyond the list hardly ever comes. */
function place(counts: Counts | undefined, into: Float64Array): void {
	into.fill(0);
	if (!counts) return;
	const { first, chance } = counts;
	const within = Math.min(chance.length, into.length - first);
	for (let i = 0; i < within; i++) into[first + i] = chance[i] as number;
}

/** The transform of an amount that is known, which `moved` shares between two whole ones, at each frequency. */
export function spectrumOfAmount(amount: number, length: number): Spectrum {
	const half = length / 2;
	const { cos, sin } = turns(half);
	const whole = Math.floor(amount);
	const above = amount - whole;
	const re = new Float64Array(half + 1);
	const im = new Float64Array(half + 1);
	for (let turn = 0; turn <= half; turn++) {
		const low = (turn * whole) % length;
		const high = (low + turn) % length;
		re[turn] = (1 - above) * at(cos, low) + above * at(cos, high);
		im[turn] = (1 - above) * at(sin, low) + above * at(sin, high);
	}
	return { re, im };
}

/** After half a turn the sign is the other one. */
function at(halfTurn: Float64Array, place: number): number {
	const half = halfTurn.length;
	return place < half ? (halfTurn[place] as number) : -(halfTurn[place - half] as number);
}

/**
 * The counts whose transform it is.
 *
 * @param amounts the first so many
 */
export function countsOf({ re: halfRe, im: halfIm }: Spectrum, amounts: number): Counts {
	const half = halfRe.length - 1;
	const length = 2 * half;
	const re = new Float64Array(length);
	const im = new Float64Array(length);
	// Turned the other way round: the transform is its own inverse then.
	for (let turn = 0; turn <= half; turn++) {
		const back = (length - turn) % length;
		re[back] = halfRe[turn] as number;
		im[back] = halfIm[turn] as number;
		re[turn] = halfRe[turn] as number;
		im[turn] = -(halfIm[turn] as number);
	}
	transform(re, im);
	const first = Math.min(amounts, length);
	const chance = new Float64Array(first);
	for (let i = 0; i < first; i++) {
		const sum = (re[i] as number) / length;
		if (sum >= NOISE) chance[i] = sum;
	}
	return withoutTails(0, chance, first);
}
