/**
 * Where lists of chances that follow each other tend to: of their weighted means, the one
 * that would change least from one list to the next (reduced rank extrapolation; A. Sidi,
 * Vector Extrapolation Methods, from memory). Weights add up to one, some below none.
 *
 * @param lists two or more, each made from the one before in the same way
 */
export function tendsTo(lists: readonly Float64Array[]): Float64Array {
	const changes = lists.slice(1).map((list, i) => changeOf(lists[i] as Float64Array, list));
	const weights = leastTogether(changes);
	const mean = new Float64Array((lists[0] as Float64Array).length);
	weights.forEach((weight, i) => {
		addTimes(weight, lists[i + 1] as Float64Array, mean);
	});
	return mean;
}

/** A part of the largest change, so that changes that are nearly each other's multiples have weights too. */
const NEARLY = 1e-12;

/** The weights, one altogether, with which some lists add up to the least. */
function leastTogether(lists: readonly Float64Array[]): number[] {
	const rows = lists.map((a) => [...lists.map((b) => product(a, b)), 1]);
	const largest = Math.max(...rows.map((row, i) => row[i] as number));
	if (largest === 0) return lists.map(() => 1 / lists.length);
	rows.forEach((row, i) => {
		row[i] = (row[i] as number) + NEARLY * largest;
	});
	const weights = solved(rows);
	const sum = weights.reduce((all, weight) => all + weight, 0);
	return weights.map((weight) => weight / sum);
}

/** The unknowns of equations that are symmetric and definite: Gauss, in the order they stand in. Each row ends with its right side. */
function solved(rows: number[][]): number[] {
	const at = (row: number, column: number) => rows[row]?.[column] as number;
	const count = rows.length;
	for (let i = 0; i < count; i++)
		for (let below = i + 1; below < count; below++) {
			const times = at(below, i) / at(i, i);
			rows[below] = (rows[below] as number[]).map((each, c) => each - times * at(i, c));
		}
	const unknowns: number[] = [];
	for (let i = count - 1; i >= 0; i--) {
		let right = at(i, count);
		for (let c = i + 1; c < count; c++) right -= at(i, c) * (unknowns[c] as number);
		unknowns[i] = right / at(i, i);
	}
	return unknowns;
}

function changeOf(before: Float64Array, after: Float64Array): Float64Array {
	const change = new Float64Array(after.length);
	for (let i = 0; i < change.length; i++) change[i] = (after[i] as number) - (before[i] as number);
	return change;
}

function product(a: Float64Array, b: Float64Array): number {
	let sum = 0;
	for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
	return sum;
}

function addTimes(weight: number, list: Float64Array, sum: Float64Array): void {
	for (let i = 0; i < sum.length; i++) sum[i] = (sum[i] as number) + weight * (list[i] as number);
}
