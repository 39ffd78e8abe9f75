import { always, type Counts, mean } from "../counts/counts.ts";
import { delaporte } from "../counts/delaporte.ts";
import { groupsOf } from "../counts/groupsOf.ts";
import { spread } from "../counts/spread.ts";
import { sumOfAll } from "../sumOfAll.ts";
import { type AlikeKits, compoundUse } from "./compoundUse.ts";
import { FollowedAmounts } from "./followedAmounts.ts";

/** Mean kits of each kind: those that go with a level of births, and those that do not. */
export interface KitsOfKinds {
	/** Of the Gamma level; Infinity where it is known. */
	readonly shape: number;
	readonly byLevel: readonly number[];
	readonly sure: readonly number[];
}

/** What kits take, in steps: each by its kind, any at all once, and each group of so many as soon as it is begun. */
export interface Taken {
	readonly perKit: readonly number[];
	readonly once: number;
	readonly perGroup: number;
	readonly groupOf: number;
}

/**
 * Use of kits of several kinds (compound Poisson, or negative binomial with a level of births), exact at every level
 * together. What a group takes beyond whole steps goes by the kit, and by how much more it is on average.
 *
 * @param most use beyond it may be left out
 */
export function useOfKinds(kits: KitsOfKinds, taken: Taken, most: number): Counts {
	const { perKit, once, perGroup, groupOf } = taken;
	const numbers = numbersOf(kits);
	const last = numbers.first + numbers.chance.length - 1;
	if (last === 0) return always(0);
	const ofNumber = (number: number) => once + Math.ceil(number / groupOf) * perGroup;
	const [first = 0] = perKit;
	if (perKit.every((use) => use === first))
		return spread(
			numbers,
			(number) => (number === 0 ? 0 : ofNumber(number) + number * first),
			most,
		);
	if (perGroup > 0 && groupOf >= last)
		return useOfKinds(kits, { ...taken, once: ofNumber(1), perGroup: 0 }, most);
	const whole = Math.floor(perGroup);
	const rest = perGroup - whole;
	const none = numbers.first === 0 ? (numbers.chance[0] as number) : 0;
	const begun = rest === 0 ? 0 : mean(groupsOf(numbers, groupOf)) - mean(numbers) / groupOf;
	const more = once + (rest * begun) / (1 - none);
	const used = new FollowedAmounts();
	used.addPart(always(0), none, 0);
	if (more <= most) {
		const byUse = kitsByUse(
			kits,
			perKit.map((use) => use + rest / groupOf),
		);
		const some = compoundUse(kits.shape, byUse, whole, groupOf, Math.floor(most - more));
		used.addPart(without(some, none), 1, more);
	}
	return used.isPossible ? used.counts : { first: 0, chance: new Float64Array(1) };
}

function numbersOf({ shape, byLevel, sure }: KitsOfKinds): Counts {
	return delaporte(sumOfAll(sure), shape, sumOfAll(byLevel));
}

/** Kits by what they take: an amount between two whole ones is shared between them, so that its mean stays. */
function kitsByUse({ byLevel, sure }: KitsOfKinds, perKit: readonly number[]): AlikeKits[] {
	const kits = new Map<number, AlikeKits>();
	perKit.forEach((each, kind) => {
		const whole = Math.floor(each);
		const above = each - whole;
		for (const [use, part] of [
			[whole, 1 - above],
			[whole + 1, above],
		] as const) {
			const before = kits.get(use) ?? { byLevel: 0, sure: 0 };
			const ofLevel = before.byLevel + part * (byLevel[kind] as number);
			const ofSure = before.sure + part * (sure[kind] as number);
			if (ofLevel + ofSure > 0) kits.set(use, { use, byLevel: ofLevel, sure: ofSure });
		}
	});
	return [...kits.values()];
}

/** No use by some kits, without no use by none. */
function without({ first, chance }: Counts, none: number): Counts {
	if (first > 0) return { first, chance };
	const some = Float64Array.from(chance);
	some[0] = Math.max(0, (some[0] as number) - none);
	return { first, chance: some };
}
