import { poisson, poissonTerms } from "../counts/poisson.ts";

/** Chances below this are not carried on. */
const SMALLEST = 1e-15;
/** Queues longer than this are not followed. */
const LONGEST = 4000;
/** What comes out is made here, and then copied as long as it is: a list of thousands for each step would be much to tidy up. */
const made = new Float64Array(LONGEST);

/**
 * How likely each number of kits is to wait or be worked on, after one service time.
 *
 * Crommelin: with a fixed service time, all that were worked on at its start are done at
 * its end, and nothing else is. So of n kits, n − people (at least none) remain, and those
 * that came in the meantime are added. Holds for any hours of the day.
 *
 * @param cameMean mean number that came during the service time
 */
export function oneServiceLater(
	kits: Float64Array,
	people: number,
	cameMean: number,
): Float64Array {
	const { first, chance } = poissonTerms(cameMean);
	const remain = Math.max(1, kits.length - people);
	let end = Math.min(LONGEST, remain + first + chance.length - 1);
	const last = end - 1;
	const later = made.fill(0, 0, end);
	let done = 0;
	for (let n = 0; n <= people && n < kits.length; n++) done += kits[n] as number;
	for (let n = 0; n < remain; n++) {
		const weight = n === 0 ? done : (kits[n + people] as number);
		const from = n + first;
		const followed = Math.max(0, Math.min(chance.length, last - from));
		addTimes(later, from, chance, followed, weight);
		for (let i = followed; i < chance.length; i++)
			later[last] = (later[last] as number) + weight * (chance[i] as number);
	}
	while (end > 1 && (later[end - 1] as number) < SMALLEST) end--;
	return later.slice(0, end);
}

/** By itself, because the engine is quick with so small a function whatever was done before. */
export function addTimes(
	to: Float64Array,
	from: number,
	chance: Float64Array,
	end: number,
	weight: number,
) {
	for (let i = 0; i < end; i++)
		to[from + i] = (to[from + i] as number) + weight * (chance[i] as number);
}

/**
 * How likely each number of kits is to wait or be worked on at any time, where they come
 * evenly: the M/D/c queue, by elimination from the longest queue down (Grassmann, Taksar
 * and Heyman), which never subtracts.
 *
 * @param people at least one
 * @param comeInService mean number that comes during one service time, below `people`
 * @example kitsInQueue(1, 0.5) // 0.5, 0.3244, 0.1226, …
 */
export function kitsInQueue(people: number, comeInService: number): Float64Array {
	if (comeInService === 0) return Float64Array.of(1);
	const { first, chance } = poisson(comeInService);
	const furthest = first + chance.length - 1;
	const longest = Math.min(LONGEST, furthest + people + tailLength(people, comeInService));
	// Row n holds the chances from n − people (or 0) on.
	const width = people + furthest + 1;
	const base = (n: number) => Math.max(0, n - people);
	const moves = Array.from({ length: longest + 1 }, (_, n) => {
		const row = new Float64Array(width);
		for (let i = 0; i < chance.length; i++) {
			const at = Math.min(base(n) + first + i, longest) - base(n);
			row[at] = (row[at] as number) + (chance[i] as number);
		}
		return row;
	});
	// So few as hardly ever come are never there: from no number of kits does it go below the first.
	const from = (n: number) => Math.max(first, n - furthest);
	for (let n = longest; n > first; n--) {
		const row = moves[n] as Float64Array;
		let down = 0;
		for (let j = base(n); j < n; j++) down += row[j - base(n)] as number;
		for (let i = from(n); i < n; i++) {
			const other = moves[i] as Float64Array;
			const at = n - base(i);
			const share = (other[at] as number) / down;
			other[at] = share;
			if (share === 0) continue;
			for (let j = base(n); j < n; j++) {
				const to = j - base(i);
				other[to] = (other[to] as number) + share * (row[j - base(n)] as number);
			}
		}
	}
	const kits = new Float64Array(longest + 1);
	kits[first] = 1;
	let sum = 1;
	for (let n = first + 1; n <= longest; n++) {
		for (let i = from(n); i < n; i++)
			kits[n] =
				(kits[n] as number) +
				(kits[i] as number) * ((moves[i] as Float64Array)[n - base(i)] as number);
		sum += kits[n] as number;
	}
	return kits.map((chanceOf) => chanceOf / sum);
}

/** How many kits more until a queue's tail is below SMALLEST: it shrinks by the root of z^people = e^(m(z − 1)) above 1. */
function tailLength(people: number, comeInService: number): number {
	const beyond = (z: number) => comeInService * (z - 1) - people * Math.log(z);
	let low = people / comeInService;
	let high = 2 * low;
	while (beyond(high) < 0) high *= 2;
	for (let i = 0; i < 60; i++) {
		const middle = (low + high) / 2;
		if (beyond(middle) < 0) low = middle;
		else high = middle;
	}
	return Math.ceil(-Math.log(SMALLEST) / Math.log(low));
}
