import { convolved, isWorthTransforming, transformLength } from "./convolved.ts";
import { always, type Counts, TAIL } from "./counts.ts";

/**
 * The sum of two independent counts (their convolution), exactly; of very many amounts within
 * what cannot be seen in any result (`convolved`).
 *
 * @param most sums beyond it are left out: the chances of all others stay as they are
 */
export function plus(a: Counts, b: Counts, most = Number.POSITIVE_INFINITY): Counts {
	const first = a.first + b.first;
	if (first > most) return { first: most, chance: new Float64Array(1) };
	const amounts = Math.min(a.chance.length + b.chance.length - 1, most - first + 1);
	// Use comes in packs and pieces, so many amounts in between cannot occur: those are passed over.
	const [ofA, ofB] = [possible(a), possible(b)];
	const fewer = ofA * b.chance.length <= ofB * a.chance.length;
	const [outer, inner] = fewer ? [a, b] : [b, a];
	const [few, many] = [outer, inner].map(({ chance }) => chance.subarray(0, amounts)) as Both;
	const length = transformLength(few.length + many.length - 1);
	const chance = isWorthTransforming(ofA * ofB, length)
		? convolved(few, many, amounts, length)
		: multiplied(few, many, amounts);
	return withoutTails({ first, chance });
}

type Both = [Float64Array, Float64Array];

function multiplied(few: Float64Array, many: Float64Array, amounts: number): Float64Array {
	const chance = new Float64Array(amounts);
	const places = placesOf(many);
	let within = places.length;
	for (let i = 0; i < few.length; i++) {
		const p = few[i] as number;
		if (p === 0) continue;
		while (within > 0 && i + (places[within - 1] as number) >= amounts) within--;
		for (let place = 0; place < within; place++) {
			const j = places[place] as number;
			chance[i + j] = (chance[i + j] as number) + p * (many[j] as number);
		}
	}
	return chance;
}

/** The places of what is possible. */
function placesOf(chance: Float64Array): Uint32Array {
	const places = new Uint32Array(chance.length);
	let count = 0;
	for (let i = 0; i < chance.length; i++) if (chance[i] !== 0) places[count++] = i;
	return places.subarray(0, count);
}

/** How many numbers a count can come to. */
function possible({ chance }: Counts): number {
	let numbers = 0;
	for (let i = 0; i < chance.length; i++) if (chance[i] !== 0) numbers++;
	return numbers;
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
	for (let i = 0; i < one.chance.length; i++) if (one.chance[i] !== other.chance[i]) return false;
	return true;
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

/**
 * Far below what is cut off. Chances that went on shrinking would come to numbers so small
 * (denormal) that a processor takes a hundred times as long for each.
 */
const NONE = TAIL * 1e-17;

/** Cuts off both ends where their chances cannot be seen in any result. */
function withoutTails({ first, chance }: Counts): Counts {
	const cut = TAIL * 1e-3;
	for (let i = 0; i < chance.length; i++) if ((chance[i] as number) < NONE) chance[i] = 0;
	let from = 0;
	let to = chance.length;
	for (let sum = chance[from] as number; from < to - 1 && sum < cut; )
		sum += chance[++from] as number;
	for (let sum = chance[to - 1] as number; to > from + 1 && sum < cut; )
		sum += chance[--to - 1] as number;
	return from === 0 && to === chance.length
		? { first, chance }
		: { first: first + from, chance: chance.slice(from, to) };
}

/** The count with a known number added. */
export function shifted({ first, chance }: Counts, by: number): Counts {
	return { first: first + by, chance };
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
