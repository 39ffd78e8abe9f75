import { always, type Counts } from "../counts/counts.ts";
import { poisson } from "../counts/poisson.ts";
import { spread } from "../counts/spread.ts";
import { plus } from "../counts/sumOf.ts";
import { FollowedAmounts } from "./followedAmounts.ts";

/**
 * Use of Poisson numbers of kits of several kinds (compound Poisson), and of what their number brings with it.
 *
 * @param means mean kits of each kind
 * @param perKit use of a kit of each kind, in steps
 * @param ofNumber use that goes by the number of kits alone, in steps
 * @param most use beyond it may be left out
 */
export function kitsWithUse(
	means: readonly number[],
	perKit: readonly number[],
	ofNumber: (kits: number) => number,
	most: number,
): Counts {
	const all = means.reduce((sum, m) => sum + m, 0);
	const { first, chance } = poisson(all);
	const alike = perKit.every((use) => use === perKit[0]);
	if (alike || all === 0)
		return spread({ first, chance }, (kits) => ofNumber(kits) + kits * (perKit[0] ?? 0), most);
	const ofKind = { first: 0, chance: Float64Array.from(means, (mean) => mean / all) };
	const oneKit = spread(ofKind, (kind) => perKit[kind] as number);
	const used = new FollowedAmounts();
	let ofKits = always(0);
	for (let kits = 0; kits < first + chance.length; kits++) {
		const more = ofNumber(kits);
		if (ofKits.first + more > most) break;
		used.addPart(ofKits, chance[kits - first] ?? 0, more);
		ofKits = plus(ofKits, oneKit, most);
	}
	return used.isPossible ? used.counts : { first: 0, chance: new Float64Array(1) };
}
