/** Draws for simulations: none of it shared with the program. */

/** A number of a standard normal distribution. */
function normal(random: () => number): number {
	return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/** A Gamma number of mean 1 with the shape given (Marsaglia and Tsang 2000). */
export function gammaDraw(shape: number, random: () => number): number {
	const raised = shape < 1 ? shape + 1 : shape;
	const d = raised - 1 / 3;
	const c = 1 / Math.sqrt(9 * d);
	for (;;) {
		const x = normal(random);
		const v = (1 + c * x) ** 3;
		if (v <= 0 || Math.log(1 - random()) >= x * x * 0.5 + d - d * v + d * Math.log(v)) continue;
		return ((shape < 1 ? random() ** (1 / shape) : 1) * d * v) / shape;
	}
}

/** A Poisson number, large means in halves. */
export function poissonDraw(mean: number, random: () => number): number {
	if (mean > 30) return poissonDraw(mean / 2, random) + poissonDraw(mean / 2, random);
	let count = 0;
	for (let limit = Math.exp(-mean), p = random(); p > limit; p *= random()) count++;
	return count;
}

/** Births of a day: Poisson, or with a size of its own negative binomial. */
export function birthsDraw(mean: number, size: number, random: () => number): number {
	return poissonDraw(Number.isFinite(size) ? mean * gammaDraw(size, random) : mean, random);
}
