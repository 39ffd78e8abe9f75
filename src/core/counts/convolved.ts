import { transform } from "./transform.ts";

/** Products beyond which going through the Fourier transform is quicker, for each step of it. */
const WORTH = 12;
/** Rounding errors of the transform are smaller; of chances that add up to 1 nobody sees so little. */
export const NOISE = 1e-16;

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
