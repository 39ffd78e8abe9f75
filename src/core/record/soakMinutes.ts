import { clockAfter } from "./momentAt.ts";

/** Longest soak that is no slip of the pen, in minutes (common practice, no source). */
const LONGEST_SOAK = 12 * 60;

interface Soak {
	readonly start: number;
	readonly soak_in: number | null;
	readonly soak_out: number | null;
}

/**
 * Minutes that the last load of a round lay in the solution, over midnight too.
 *
 * @returns undefined where it was not written down; null where the times contradict each other
 * @example in at 23:50, out at 00:10, of a round that began at 22:30 → 20
 */
export function soakMinutes({ start, soak_in, soak_out }: Soak): number | null | undefined {
	if (soak_in === null || soak_out === null) return undefined;
	const minutes = clockAfter(start, soak_out) - clockAfter(start, soak_in);
	return minutes < 0 || minutes > LONGEST_SOAK ? null : minutes;
}
