import type { Counts } from "./counts.ts";
import { negativeBinomial } from "./negativeBinomial.ts";
import { withoutTails } from "./passingSum.ts";
import { poisson } from "./poisson.ts";
import { plus } from "./sumOf.ts";

/** Lists that are shorter are multiplied out in no time. */
const LONG = 2000;
/** So far beyond the Poisson count, in times of it, rounding errors shrink from amount to amount. */
const FAR = 4;

/**
 * A count of which a part is Poisson and the rest negative binomial, apart from each other
 * (Delaporte).
 *
 * Of a wide level only the first amounts are multiplied out, to far beyond the Poisson count
 * and the likeliest of the level. There, with generating function G, mean μ, size r and share p,
 * (1 − pz)·G′ = (μ·(1 − pz) + rp)·G, so each chance follows from the two before:
 * (n + 1)·P(n + 1) = (pn + μ + rp)·P(n) − μp·P(n − 1).
 *
 * @param size of the negative binomial, above 0
 * @example delaporte(0.1, 1, 0.1).chance[0] // exp(−0.1) ÷ 1.1 = 0.82258
 */
export function delaporte(poissonMean: number, size: number, mixedMean: number): Counts {
	const sure = poisson(poissonMean);
	const mixed = negativeBinomial(size, mixedMean);
	const sureEnd = sure.first + sure.chance.length;
	const near = sureEnd + Math.max(FAR * sureEnd, mixedMean * (1 - 1 / size));
	const first = sure.first + mixed.first;
	const amounts = sure.chance.length + mixed.chance.length - 1;
	const known = Math.ceil(near) - first;
	if (known + LONG > amounts || !Number.isFinite(size)) return plus(sure, mixed);
	const chance = new Float64Array(amounts);
	const begin = plus(sure, mixed, first + known - 1);
	chance.set(begin.chance, begin.first - first);
	goOn(chance, known, first, { poissonMean, size, share: mixedMean / (mixedMean + size) });
	return withoutTails(first, chance, amounts);
}

interface Parts {
	readonly poissonMean: number;
	readonly size: number;
	readonly share: number;
}

/** Each amount from place `known` on from the two before. */
function goOn(chance: Float64Array, known: number, first: number, parts: Parts): void {
	const { poissonMean, size, share } = parts;
	const each = poissonMean + size * share;
	const less = poissonMean * share;
	let before = chance[known - 2] as number;
	let last = chance[known - 1] as number;
	const end = chance.length;
	for (let place = known; place < end; place++) {
		const n = first + place;
		const next = ((share * (n - 1) + each) * last - less * before) / n;
		chance[place] = next;
		before = last;
		last = next;
	}
}
