import { transformLength } from "../counts/convolved.ts";
import type { Counts } from "../counts/counts.ts";
import { countsOf, spectraOf, spectrumOfAmount } from "../counts/spectra.ts";
import { type AlikeUse, alikeUses } from "./alikeUses.ts";
import { BoundsOfUse } from "./boundsOfUse.ts";
import { DescaledRounds } from "./descaledRounds.ts";

/** Up to so many products, round by round is quick. */
const FEW = 1e6;
/** Products that take as long as one step of this way. */
const WORTH = 4;

/**
 * The use of rounds with their descalings, as `withDescaling` has it, in the terms of the Fourier
 * transform from the first round to the last: each amount within 1e-14 of every product added up
 * round by round, and of many amounts far sooner. Undefined where it would not be sooner.
 */
export function descaledTogether(
	perDescale: number,
	every: number,
	used: readonly Counts[],
	idle: readonly number[],
	most: number,
): Counts | undefined {
	if (productsOf(used, every, most) <= FEW) return undefined;
	const kinds = alikeUses(used, idle);
	const bounds = new BoundsOfUse(kinds, perDescale, every);
	if (bounds.isMoreThan(most)) return { first: most, chance: new Float64Array(1) };
	const amounts = bounds.most + 1;
	const length = transformLength(Math.max(2, amounts));
	const steps = (length / 2) * (used.length * every + (kinds.length / 2 + 1) * Math.log2(length));
	return productsOf(used, every, Math.min(most, amounts)) > WORTH * steps
		? added(perDescale, every, kinds, most, length)
		: undefined;
}

/** About as many products as it takes round by round, where what was used so far grows evenly up to `most`. */
function productsOf(used: readonly Counts[], every: number, most: number): number {
	let products = 0;
	let possible = 0;
	used.forEach(({ chance }, round) => {
		let amounts = 0;
		for (let i = 0; i < chance.length; i++) if (chance[i] !== 0) amounts++;
		products += Math.min(round, every) * amounts * Math.min(possible, (most * round) / used.length);
		possible += chance.length;
	});
	return products;
}

function added(
	perDescale: number,
	every: number,
	kinds: readonly AlikeUse[],
	most: number,
	length: number,
): Counts {
	const running = spectraOf(
		kinds.map((kind) => kind.running),
		length,
	);
	const sum = spectrumOfAmount(perDescale, length);
	const rounds = new DescaledRounds(kinds, every);
	for (let turn = 0; turn <= length / 2; turn++) rounds.findAt(turn, running, sum);
	return countsOf(sum, most + 1);
}
