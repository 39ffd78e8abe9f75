import { MOST_OBJECTS, memoize } from "../memoize.ts";
import { areAlwaysFree, type Hands } from "../rounds/handsOneByOne.ts";
import { bothAway, lapsedAtMidnight } from "./lapsedAtMidnight.ts";

/** Kinds of kit that the same people reprocess. */
export interface OtherKinds {
	/** Of the uses of all kinds, the part that is of the kind asked for. */
	readonly share: number;
	/** The kind asked for, as it is in service. */
	readonly own: KindInQueue;
	readonly kinds: readonly KindInQueue[];
}

/** What decides how many kits of a kind go out of date together. */
export interface KindInQueue {
	readonly kits: number;
	readonly usesPerDay: number;
	/** Days a ready one may be used; infinite where it never goes out of date. */
	readonly days: number;
}

interface AmongOthers {
	readonly hands: Hands;
	/** Absent where all kits are of one kind. */
	readonly others?: OtherKinds;
}

/** Of the uses of all kinds that the same people reprocess, the part that is of this one. */
export const shareOf = ({ others }: AmongOthers): number => others?.share ?? 1;

/**
 * Uses of all kinds, where so many are of this one. A division gives each kind another last
 * digit: without it their queue is the same and found once.
 */
export function ofAllKinds(uses: number, among: AmongOthers): number {
	const share = shareOf(among);
	return share === 1 || uses === 0 ? uses : Number((uses / share).toPrecision(12));
}

/** How likely 0, 1, … kits of other kinds are to go out of date at a midnight. */
export function lapsedOfOthers({ others }: AmongOthers): Float64Array | undefined {
	return others && lapsedTogether(others.kinds);
}

/** The same of all kinds, which is one list for each of them; undefined where nobody waits for them. */
export function lapsedOfAll({ others, hands }: AmongOthers): Float64Array | undefined {
	if (!others || areAlwaysFree(hands)) return undefined;
	const kinds = [others.own, ...others.kinds];
	const lapsed = lapsedTogether(kinds.sort((a, b) => byKits(a, b)));
	return lapsed.length > 1 ? lapsed : undefined;
}

const byKits = (a: KindInQueue, b: KindInQueue) =>
	a.kits - b.kits || a.usesPerDay - b.usesPerDay || a.days - b.days;

/** Less likely numbers are seen in no result. */
const UNSEEN = 1e-9;

const lapsedTogether = memoize(
	(kinds: readonly KindInQueue[]): Float64Array => {
		const all = kinds
			.filter(({ kits, days }) => kits > 0 && Number.isFinite(days))
			.map(({ kits, usesPerDay, days }) => lapsedAtMidnight(kits, usesPerDay, days))
			.reduce(bothAway, Float64Array.of(1));
		return inFewNumbers(all.subarray(0, all.findLastIndex((chance) => chance > UNSEEN) + 1));
	},
	(kinds) => kinds.flatMap(({ kits, usesPerDay, days }) => [kits, usesPerDay, days]),
	MOST_OBJECTS,
);

/** So many numbers of kits are followed one by one; of more, some with what lies between. */
const MOST_NUMBERS = 16;

/** Numbers between two that are followed are shared by both, so that their mean stays. */
function inFewNumbers(lapsed: Float64Array): Float64Array {
	const apart = Math.ceil((lapsed.length - 1) / MOST_NUMBERS);
	if (apart <= 1) return lapsed;
	const few = new Float64Array(lapsed.length + apart);
	lapsed.forEach((chance, kits) => {
		const below = kits - (kits % apart);
		const part = (kits - below) / apart;
		few[below] = (few[below] as number) + chance * (1 - part);
		few[below + apart] = (few[below + apart] as number) + chance * part;
	});
	return few.subarray(0, few.findLastIndex((chance) => chance > 0) + 1);
}
