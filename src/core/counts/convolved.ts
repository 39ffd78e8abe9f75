import { memoize } from "../memoize.ts";

/** Products beyond which going through the Fourier transform is quicker, for each step of it. */
const WORTH = 12;
/** Rounding errors of the transform are smaller; of chances that add up to 1 nobody sees so little. */
const NOISE = 1e-16;

/** The length of transform that a sum of so many amounts asks for. */
export function transformLength(amounts: number): number {
	return 2 ** Math.ceil(Math.log2(amounts));
}

/** Whether so many products take longer than transforms of the length. */
export function isWorthTransforming(products: number, length: number): boolean {
	return products > WORTH * length * Math.log2(length);
}

/**
 * The sum of two independent counts (their convolution) by the fast Fourier transform: of many
 * amounts each within 1e-16 of every product added up one by one, and far sooner.
 *
 * Both are transformed as one: a real and an imaginary part, whose square holds twice their product.
 *
 * @param amounts the first so many of the sum
 * @param length as `transformLength` gives it for all of the sum
 */
export function convolved(
	a: Float64Array,
	b: Float64Array,
	amounts: number,
	length: number,
): Float64Array {
	const re = new Float64Array(length);
	const im = new Float64Array(length);
	re.set(a);
	im.set(b);
	transform(re, im);
	for (let i = 0; i < length; i++) {
		const x = re[i] as number;
		const y = im[i] as number;
		re[i] = x * x - y * y;
		// The other way round and back again is the inverse: the imaginary part turns its sign.
		im[i] = -2 * x * y;
	}
	transform(re, im);
	const chance = new Float64Array(amounts);
	for (let i = 0; i < amounts; i++) {
		const sum = -(im[i] as number) / (2 * length);
		if (sum >= NOISE) chance[i] = sum;
	}
	return chance;
}

/** Cosines and sines of the parts of half a turn, for parts of this many, one after the other. */
const turns = memoize((half: number) => ({
	cos: Float64Array.from({ length: half }, (_, k) => Math.cos((Math.PI * k) / half)),
	sin: Float64Array.from({ length: half }, (_, k) => -Math.sin((Math.PI * k) / half)),
}));

/** In place, radix 2. */
function transform(re: Float64Array, im: Float64Array): void {
	const length = re.length;
	swapped(re, im);
	for (let low = 0; low + 1 < length; low += 2) {
		const [x, y] = [re[low + 1] as number, im[low + 1] as number];
		re[low + 1] = (re[low] as number) - x;
		im[low + 1] = (im[low] as number) - y;
		re[low] = (re[low] as number) + x;
		im[low] = (im[low] as number) + y;
	}
	for (let half = 2; half < length; half *= 2) {
		const { cos, sin } = turns(half);
		for (let from = 0; from < length; from += 2 * half)
			for (let k = 0; k < half; k++) {
				const low = from + k;
				const high = low + half;
				const c = cos[k] as number;
				const s = sin[k] as number;
				const x = (re[high] as number) * c - (im[high] as number) * s;
				const y = (re[high] as number) * s + (im[high] as number) * c;
				re[high] = (re[low] as number) - x;
				im[high] = (im[low] as number) - y;
				re[low] = (re[low] as number) + x;
				im[low] = (im[low] as number) + y;
			}
	}
}

/** Each to the place whose number has the same binary digits the other way round. */
function swapped(re: Float64Array, im: Float64Array): void {
	const length = re.length;
	for (let i = 1, j = 0; i < length; i++) {
		let bit = length >> 1;
		for (; j & bit; bit >>= 1) j ^= bit;
		j ^= bit;
		if (i >= j) continue;
		const [x, y] = [re[i] as number, im[i] as number];
		re[i] = re[j] as number;
		im[i] = im[j] as number;
		re[j] = x;
		im[j] = y;
	}
}
