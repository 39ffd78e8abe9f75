/** Relative size of the rounding error of a division that should have come out whole. */
const ROUNDING_ERROR = 1e-9;

/**
 * The next multiple of `step` that is not below `quantity`.
 *
 * @example upTo(785.71, 10) // 790
 */
export function upTo(quantity: number, step: number): number {
	const steps = quantity / step;
	const nearest = Math.round(steps);
	const whole = Math.abs(steps - nearest) <= ROUNDING_ERROR * Math.max(1, steps);
	return (whole ? nearest : Math.ceil(steps)) * step;
}
