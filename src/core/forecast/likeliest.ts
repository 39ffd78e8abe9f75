import { bestDiscount } from "./bestDiscount.ts";
import { discountedFilter, type Variation } from "./discountedFilter.ts";

/** Sizes r of a day's own variation that are tried, from hardly any to wild (estimate); none besides. */
const DAY_SIZES = [80, 56, 40, 28, 20, 14, 10, 7, 5, 3.5, 2.5];

/**
 * A size of the day's own has to make the register this much likelier, in logarithm,
 * before days are taken to vary more than Poisson.
 *
 * Without it 20 to 43 of 100 Poisson units would be given a size by chance alone; with
 * it 3 to 9 are, and a unit of 6 births a day of size 5 is still told from 56 days in
 * 98 of 100 (tests/reference/daySize.test.ts).
 */
const CLEARLY_LIKELIER = 0.5;

/**
 * Once a size makes the register this much less likely than a tamer one, in logarithm, a
 * wilder one never makes it likelier again: none did in 1,469 registers drawn.
 */
const PAST_THE_BEST = 1;

/**
 * ω and the day's own size r under which the register's own days were forecast best.
 *
 * Poisson days keep r = none, and with it the ω and the forecast they had.
 */
export function likeliest(
	counts: readonly (number | null)[],
	factors: readonly number[],
): Variation {
	const of = (daySpread: number) => {
		const discount = bestDiscount(counts, factors, daySpread);
		const variation = { discount, daySpread };
		return { variation, score: discountedFilter(counts, factors, variation).logLikelihood };
	};
	const poisson = of(0);
	let best = poisson;
	for (const size of DAY_SIZES) {
		const wilder = of(1 / size);
		if (wilder.score > best.score) best = wilder;
		if (wilder.score < best.score - PAST_THE_BEST) break;
	}
	return best.score - poisson.score > CLEARLY_LIKELIER ? best.variation : poisson.variation;
}
