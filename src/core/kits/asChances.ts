/** Numbers as chances: none below none, one altogether. */
export function asChances(numbers: Float64Array): Float64Array {
	const chances = new Float64Array(numbers.length);
	let sum = 0;
	for (let i = 0; i < chances.length; i++) {
		chances[i] = Math.max(0, numbers[i] as number);
		sum += chances[i] as number;
	}
	for (let i = 0; i < chances.length; i++) chances[i] = (chances[i] as number) / sum;
	return chances;
}
