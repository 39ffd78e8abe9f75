import { type Counts, TAIL } from "../counts/counts.ts";
import { withoutTails } from "../counts/passingSum.ts";
import { plus } from "../counts/sumOf.ts";

/** Up to this mean, the chance of no kit is a number that the others can begin with. */
const MODERATE = 600;
/** What is less likely, far above the mean, cannot be seen in any result. */
const UNSEEN = TAIL * 1e-17;

/**
 * Use of a Poisson number of kits, of which each takes an amount by chance, where there is any kit at all.
 *
 * Each chance from those before it (the recursion of Adelson 1966 and Panjer 1981, named from memory), which adds up
 * what every number of kits would come to without going through the numbers.
 *
 * @param kits mean number
 * @param oneKit how likely each use of one kit is
 * @param most use beyond it is left out: the chances of all others stay as they are
 */
export function useOfSomeKits(kits: number, oneKit: Counts, most: number): Counts {
	if (kits > MODERATE) {
		// That half of them are none hardly ever comes.
		const half = useOfSomeKits(kits / 2, oneKit, most);
		return plus(half, half, most);
	}
	const { nothing, amounts, parts, mean } = takenBy(kits, oneKit);
	const largest = amounts.at(-1) ?? 0;
	const chance = [Math.exp(nothing - kits)];
	for (let use = 1, seen = 0; use <= most; use++) {
		let sum = 0;
		for (let i = 0; i < amounts.length && (amounts[i] as number) <= use; i++)
			sum += (parts[i] as number) * (chance[use - (amounts[i] as number)] as number);
		const each = sum / use;
		if (each >= UNSEEN) seen = use;
		else if (use > mean && use - seen > largest) break;
		chance.push(each);
	}
	// No use by some kits, without no use by none.
	chance[0] = Math.exp(-kits) * Math.expm1(nothing);
	return withoutTails(0, Float64Array.from(chance), chance.length);
}

/** Mean kits that take nothing, and each amount that others take with their mean use by it. */
function takenBy(kits: number, { first, chance }: Counts) {
	const amounts: number[] = [];
	const parts: number[] = [];
	for (let i = 0; i < chance.length; i++) {
		const amount = first + i;
		const part = kits * (chance[i] as number) * amount;
		if (part === 0) continue;
		amounts.push(amount);
		parts.push(part);
	}
	return {
		nothing: first === 0 ? kits * (chance[0] as number) : 0,
		amounts,
		parts,
		mean: parts.reduce((sum, part) => sum + part, 0),
	};
}
