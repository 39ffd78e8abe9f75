/** Numbers from 0 to below 1, the same in every run (the generator sfc32). */
export function randomNumbers(start: number): () => number {
	let a = 0x9e3779b9;
	let b = 0x243f6a88;
	let c = 0xb7e15162;
	let d = start | 0;
	const next = () => {
		const sum = (((a + b) | 0) + d) | 0;
		d = (d + 1) | 0;
		a = b ^ (b >>> 9);
		b = (c + (c << 3)) | 0;
		c = (((c << 21) | (c >>> 11)) + sum) | 0;
		return (sum >>> 0) / 4_294_967_296;
	};
	for (let i = 0; i < 20; i++) next();
	return next;
}

/** Time to the next event of a Poisson process. */
export function waitingTime(random: () => number, perMinute: number): number {
	return -Math.log(1 - random()) / perMinute;
}

/** Mean of batches and its standard error: batches are long, so that they hardly depend on each other. */
export function meanOfBatches(batches: readonly number[]): { mean: number; standardError: number } {
	const mean = batches.reduce((sum, value) => sum + value, 0) / batches.length;
	const squares = batches.reduce((sum, value) => sum + (value - mean) ** 2, 0);
	return { mean, standardError: Math.sqrt(squares / (batches.length - 1) / batches.length) };
}
