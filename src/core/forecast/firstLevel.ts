import type { Level } from "./discountedFilter.ts";

/**
 * The level while the register is young: births a day from the settings, moved by what
 * is recorded.
 *
 * A Gamma prior worth `priorDays`: a = births a day × days + Σ y, b = days + Σ w. So a
 * register with one birth in it, or none, never says that none will come.
 *
 * @param counts births of each day, null where not recorded
 * @param factors weekday factor of each day, the first day's first, repeating
 * @param birthsPerDay what one starts from, 0 or more
 * @param priorDays days of the register that it counts for, above 0
 * @example 2 births a day for 7 days, then 1, 0 and 3: a 18, b 10
 */
export function firstLevel(
	counts: readonly (number | null)[],
	factors: readonly number[],
	birthsPerDay: number,
	priorDays: number,
): Level {
	let a = birthsPerDay * priorDays;
	let b = priorDays;
	counts.forEach((count, day) => {
		if (count === null) return;
		a += count;
		b += factors[day % factors.length] as number;
	});
	return { a, b };
}
