/** A value that a level may have, as a multiple of its mean, and how much it weighs; weights add up to 1. */
export interface LevelNode {
	readonly factor: number;
	readonly weight: number;
}

/** More sweeps than this mean a mistake in the program: a few are usual. */
const MOST_SWEEPS = 60;

/**
 * Generalised Gauss-Laguerre nodes for a Gamma level of mean 1.
 *
 * With n nodes the mean over the level is exact for every polynomial up to degree
 * 2n − 1. Golub and Welsch (1969): the nodes are the eigenvalues of the symmetric
 * tridiagonal matrix with diagonal 2i + A and off-diagonal √((i + 1)(i + A)); the
 * weights, the squares of the eigenvectors' first components. Found by implicit QL.
 *
 * @param shape A of the Gamma(A, A) level, above 0
 * @param count n, at least 1; one node is the mean itself
 * @example laguerreNodes(1, 2) // factors 2 − √2 and 2 + √2, weights 0.853553 and 0.146447
 */
export function laguerreNodes(shape: number, count: number): readonly LevelNode[] {
	const diagonal = Float64Array.from({ length: count }, (_, i) => 2 * i + shape);
	const beside = Float64Array.from({ length: count }, (_, i) => Math.sqrt((i + 1) * (i + shape)));
	const first = new Float64Array(count);
	first[0] = 1;
	for (let at = 0; at < count; at++) settle(at, diagonal, beside, first);
	return Array.from(diagonal, (node, i) => ({
		factor: node / shape,
		weight: (first[i] as number) ** 2,
	})).sort((one, other) => one.factor - other.factor);
}

/** Turns the matrix until the element beside the diagonal at `at` is nothing. */
function settle(at: number, d: Float64Array, e: Float64Array, first: Float64Array): void {
	for (let sweep = 0; ; sweep++) {
		let end = at;
		while (end < d.length - 1 && !isNothing(end, d, e)) end++;
		if (end === at) return;
		if (sweep === MOST_SWEEPS) throw new Error("program error: nodes were not found");
		turn(at, end, d, e, first);
	}
}

function isNothing(i: number, d: Float64Array, e: Float64Array): boolean {
	const near = Math.abs(d[i] as number) + Math.abs(d[i + 1] as number);
	return Math.abs(e[i] as number) <= Number.EPSILON * near;
}

/** One implicit QL sweep with Wilkinson's shift over the block from `at` to `end`. */
function turn(at: number, end: number, d: Float64Array, e: Float64Array, first: Float64Array) {
	const off = e[at] as number;
	const half = ((d[at + 1] as number) - (d[at] as number)) / (2 * off);
	const root = Math.hypot(half, 1);
	let g = (d[end] as number) - (d[at] as number) + off / (half + (half < 0 ? -root : root));
	let sine = 1;
	let cosine = 1;
	let moved = 0;
	for (let i = end - 1; i >= at; i--) {
		const f = sine * (e[i] as number);
		const b = cosine * (e[i] as number);
		const r = Math.hypot(f, g);
		e[i + 1] = r;
		if (r === 0) {
			d[i + 1] = (d[i + 1] as number) - moved;
			e[end] = 0;
			return;
		}
		sine = f / r;
		cosine = g / r;
		g = (d[i + 1] as number) - moved;
		const s = ((d[i] as number) - g) * sine + 2 * cosine * b;
		moved = sine * s;
		d[i + 1] = g + moved;
		g = cosine * s - b;
		const above = first[i + 1] as number;
		const here = first[i] as number;
		first[i + 1] = sine * here + cosine * above;
		first[i] = cosine * here - sine * above;
	}
	d[at] = (d[at] as number) - moved;
	e[at] = g;
	e[end] = 0;
}
