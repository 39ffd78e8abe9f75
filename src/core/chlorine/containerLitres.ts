/** Sizes of basins and buckets found on wards. */
const FOUND = [1, 2, 3, 5, 10, 15, 20];

/** The sizes that amounts are given for: those found on wards, and the unit's own preparation among them. */
export function containerLitres(own: number | undefined): number[] {
	return [...new Set(own === undefined ? FOUND : [...FOUND, own])].sort((a, b) => a - b);
}
