/** Whether two lists of chances are the same, to within so much. */
export function areAlike(one: Float64Array, other: Float64Array, within: number): boolean {
	if (one.length !== other.length) return false;
	for (let i = 0; i < one.length; i++)
		if (Math.abs((one[i] as number) - (other[i] as number)) > within) return false;
	return true;
}
