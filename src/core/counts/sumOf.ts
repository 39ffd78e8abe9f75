import { always, type Counts } from "./counts.ts";
import { passingSum } from "./passingSum.ts";

/**
 * The sum of two independent counts (their convolution), exactly; of very many amounts within
 * what cannot be seen in any result (`convolved`).
 *
 * @param most sums beyond it are left out: the chances of all others stay as they are
 */
export function plus(a: Counts, b: Counts, most = Number.POSITIVE_INFINITY): Counts {
	const { first, chance } = passingSum(a, b, most);
	return { first, chance: chance.slice() };
}

/**
 * The sum of independent counts (their convolution); 0 where there are none.
 *
 * Counts that come several times are doubled up instead of added one by one: the days of
 * a plan are mostly alike. Whether they are is seen from what they hold, so that the sum is
 * the same to the last digit whatever is remembered.
 *
 * @param most sums beyond it are left out
 */
export function sumOf(parts: readonly Counts[], most = Number.POSITIVE_INFINITY): Counts {
	return addedInPairs(
		timesOf(parts).map(({ part, times }) => repeated(part, times, most)),
		most,
	);
}

interface Times {
	readonly part: Counts;
	times: number;
}

/** Each count once, with how often it comes. */
function timesOf(parts: readonly Counts[]): Times[] {
	const all: Times[] = [];
	const known = new Map<number, Times>();
	for (const part of parts) {
		const { first, chance } = part;
		const name = first + chance.length + (chance[chance.length >> 1] as number);
		const before = known.get(name);
		if (before && isSame(before.part, part)) before.times++;
		else {
			const found = { part, times: 1 };
			all.push(found);
			if (!before) known.set(name, found);
		}
	}
	return all;
}

function isSame(one: Counts, other: Counts): boolean {
	if (one === other) return true;
	if (one.first !== other.first || one.chance.length !== other.chance.length) return false;
	return one.chance.every((chance, i) => chance === other.chance[i]);
}

/** The sum of `count` counts that are all like this one; at least one. */
function repeated(part: Counts, count: number, most: number): Counts {
	if (count === 1) return part;
	const half = repeated(part, count >> 1, most);
	const whole = plus(half, half, most);
	return count % 2 === 0 ? whole : plus(whole, part, most);
}

function addedInPairs(parts: readonly Counts[], most: number, from = 0, to = parts.length): Counts {
	if (to - from < 2) return parts[from] ?? always(0);
	const middle = (from + to) >> 1;
	return plus(addedInPairs(parts, most, from, middle), addedInPairs(parts, most, middle, to), most);
}

/** Chances of one way or another of coming to a count (a mixture), added up. */
export function either(one: Counts | undefined, other: Counts): Counts {
	if (!one) return other;
	const first = Math.min(one.first, other.first);
	const end = Math.max(one.first + one.chance.length, other.first + other.chance.length);
	const chance = new Float64Array(end - first);
	for (const part of [one, other]) {
		const from = part.first - first;
		for (let i = 0; i < part.chance.length; i++)
			chance[from + i] = (chance[from + i] as number) + (part.chance[i] as number);
	}
	return { first, chance };
}
