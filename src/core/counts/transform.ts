import { memoize } from "../memoize.ts";

/** Cosines and sines of the parts of half a turn, for parts of this many, one after the other. */
export const turns = memoize((half: number) => ({
	cos: Float64Array.from({ length: half }, (_, k) => Math.cos((Math.PI * k) / half)),
	sin: Float64Array.from({ length: half }, (_, k) => -Math.sin((Math.PI * k) / half)),
}));

/** The fast Fourier transform of complex numbers, in place (radix 2); their count is a power of two. */
export function transform(re: Float64Array, im: Float64Array): void {
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
