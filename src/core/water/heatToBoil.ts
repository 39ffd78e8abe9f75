export const KJ_PER_LITRE_PER_C = 4.186;
export const KJ_PER_KG_EVAPORATED = 2257;

/**
 * Heat to bring water to the boil, kJ; none where it is there already.
 *
 * @example heatToBoil(10, 25, 100) // 3139.5
 */
export function heatToBoil(litres: number, drawnC: number, boilingC: number): number {
	return litres * KJ_PER_LITRE_PER_C * Math.max(0, boilingC - drawnC);
}
