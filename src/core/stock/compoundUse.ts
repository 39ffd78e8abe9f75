import { type Counts, TAIL } from "../counts/counts.ts";
import { withoutTails } from "../counts/passingSum.ts";

/** Kits of which each takes the same whole number of steps. */
export interface AlikeKits {
	readonly use: number;
	/** Mean number that goes with the level of births. */
	readonly byLevel: number;
	/** Mean number that does not. */
	readonly sure: number;
}

/** What is less likely, far above the mean, cannot be seen in any result. */
const UNSEEN = TAIL * 1e-17;
/** Numbers in which chances are counted where they would be too small or too large for a processor. */
const [SMALLEST, LARGEST] = [1e-290, 1e200];

/**
 * Use of kits that take different amounts: Poisson numbers of them, and such as share a Gamma level and so
 * are negative binomial; what each group of so many kits takes as soon as it is begun is added.
 *
 * Each chance from those of smaller amounts (the recursion of Adelson 1966 and Panjer 1981, named from memory), once for
 * each number of kits since the last group was full. Of an amount s, each kit's part is as likely as any other's, so
 * that s times its chance is a sum over what the last kit took. All terms are positive: nothing is lost.
 *
 * @param shape of the Gamma level; Infinity where it is known
 * @param kits by what they take
 * @param perGroup steps that a group takes, whole; 0 where there are no groups
 * @param most use beyond it is left out: the chances of all others stay as they are
 */
export function compoundUse(
	shape: number,
	kits: readonly AlikeKits[],
	perGroup: number,
	groupOf: number,
	most: number,
): Counts {
	// Without groups, kits that take nothing are as good as none.
	const taking = kits.filter(({ use }) => use > 0 || perGroup > 0).sort((a, b) => a.use - b.use);
	const size = perGroup > 0 ? groupOf : 1;
	const isLevelKnown = shape === Number.POSITIVE_INFINITY;
	const { none, mean, furthest, again, drawn, sure } = partsOf(shape, taking, perGroup / size);
	const uses = Int32Array.from(taking, ({ use }) => use * size);
	// Chances of each amount, one for each number of kits in the last group, a full one last; and the part of the
	// amount that was taken by kits that go with the level.
	const chance: number[] = new Array(size - 1).fill(0);
	const byLevel: number[] = new Array(size).fill(0);
	const scale = new Scale(none);
	chance.push(scale.first);
	const all = [scale.first];
	for (let use = 1, seen = 0; use <= most; use++) {
		let here = 0;
		for (let inLast = 1; inLast <= size; inLast++) {
			const before = chance.length - 1 - (inLast === 1 ? (perGroup - 1) * size : 0);
			let [ofLevel, ofSure] = [0, 0];
			for (let i = 0; i < uses.length; i++) {
				const at = before - (uses[i] as number);
				if (at < 0) break;
				const p = chance[at] as number;
				ofSure += (sure[i] as number) * p;
				if (isLevelKnown) continue;
				ofLevel += (again[i] as number) * (byLevel[at] as number) + (drawn[i] as number) * p;
			}
			const sum = ofLevel + ofSure;
			// What the last group has taken ahead of kits that are still to fill it.
			const ahead = (perGroup * (size - inLast)) / size;
			const each = sum < SMALLEST ? 0 : sum / (use - ahead);
			chance.push(each);
			byLevel.push(each === 0 ? 0 : ofLevel);
			here += each;
		}
		all.push(here);
		if (here > LARGEST) scale.lower([chance, byLevel, all]);
		if (here >= scale.unseen) seen = use;
		else if (use > mean && use - seen > furthest + perGroup) break;
	}
	return withoutTails(0, Float64Array.from(all, scale.chanceOf), all.length);
}

/** Of each amount, by what the chances of smaller ones count in it. */
function partsOf(shape: number, taking: readonly AlikeKits[], ofGroup: number) {
	let [byLevel, sure, mean, furthest] = [0, 0, 0, 0];
	for (const each of taking) {
		byLevel += each.byLevel;
		sure += each.sure;
		mean += (each.byLevel + each.sure) * (each.use + ofGroup);
		furthest = each.use;
	}
	const part = (of: (kits: AlikeKits) => number) => Float64Array.from(taking, of);
	const isLevelKnown = shape === Number.POSITIVE_INFINITY;
	return {
		/** Logarithm of the chance of no kit. */
		none: -sure - (isLevelKnown ? byLevel : shape * Math.log1p(byLevel / shape)),
		mean,
		furthest,
		again: part((kits) => kits.byLevel / (byLevel + shape)),
		drawn: part((kits) => (kits.byLevel / (1 + byLevel / shape)) * (kits.use + ofGroup)),
		sure: part((kits) => (kits.sure + (isLevelKnown ? kits.byLevel : 0)) * (kits.use + ofGroup)),
	};
}

/** Of very many kits that none comes is no number that the others can begin with: they begin with another, and what it owes is kept. */
class Scale {
	readonly first: number;
	#owed: number;

	constructor(log: number) {
		this.#owed = Math.min(0, log + Math.log(LARGEST));
		this.first = Math.exp(log - this.#owed);
	}

	get unseen(): number {
		return UNSEEN / Math.exp(this.#owed);
	}

	readonly chanceOf = (each: number) => each * Math.exp(this.#owed);

	lower(lists: readonly number[][]): void {
		this.#owed += Math.log(LARGEST);
		for (const list of lists)
			for (let i = 0; i < list.length; i++) {
				const each = (list[i] as number) / LARGEST;
				list[i] = each < SMALLEST ? 0 : each;
			}
	}
}
