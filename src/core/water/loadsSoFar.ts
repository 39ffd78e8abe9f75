import type { Counts } from "../counts/counts.ts";

/** States less likely than this are let go. */
export const NEVER = 1e-15;
/** Numbers of loads less likely than this are seen in no result. */
const UNSEEN = 1e-30;

/** How likely each number of loads, from `first` on, is to have been boiled so far; the list may be longer than the numbers are. */
export interface LoadsSoFar {
	first: number;
	length: number;
	chance: Float64Array;
}

/** Lists have at least 2 to this power of numbers. */
const SHORTEST = 4;

/**
 * Loads boiled so far in each state, in lists that are given back once a round has passed: a
 * new one for each of hundreds of states at each round would be much to tidy up.
 */
export class ListsOfLoads {
	/** By the power of two that they are long. */
	readonly #spare: Float64Array[][] = [];

	/** So far no load, this likely. */
	none(chance: number): LoadsSoFar {
		const list = this.#take(1);
		list[0] = chance;
		return { first: 0, length: 1, chance: list };
	}

	/** Adds a part of one state's loads to another's, if there is one. @returns the other; undefined where it is none still */
	added(to: LoadsSoFar | undefined, part: LoadsSoFar, by: number): LoadsSoFar | undefined {
		const { chance } = part;
		let from = 0;
		let end = part.length;
		while (from < end && (chance[from] as number) * by < UNSEEN) from++;
		while (end > from && (chance[end - 1] as number) * by < UNSEEN) end--;
		if (sumOf(chance, from, end, by) <= NEVER) return to;
		const first = part.first + from;
		const known = to ?? { first, length: 0, chance: this.#take(end - from) };
		this.#makeRoom(known, first, first + end - from);
		addTimes(known.chance, first - known.first, chance, from, end, by);
		return known;
	}

	/** Takes back the lists of states that are no more. */
	giveBack(states: Iterable<LoadsSoFar>): void {
		for (const { chance } of states) this.#keep(chance);
	}

	#take(length: number): Float64Array {
		const power = Math.max(SHORTEST, 32 - Math.clz32(length - 1));
		return this.#spare[power]?.pop() ?? new Float64Array(2 ** power);
	}

	#keep(list: Float64Array): void {
		const power = 31 - Math.clz32(list.length);
		this.#spare[power] ??= [];
		this.#spare[power].push(list);
	}

	/** So that numbers `from` to before `end` are among them. */
	#makeRoom(loads: LoadsSoFar, from: number, end: number): void {
		const { first, length, chance } = loads;
		const least = Math.min(first, from);
		const wider = Math.max(first + length, end) - least;
		if (wider === length) return;
		const list = wider > chance.length ? this.#take(wider) : chance;
		const moved = first - least;
		if (list !== chance) {
			for (let i = 0; i < length; i++) list[moved + i] = chance[i] as number;
			this.#keep(chance);
		} else if (moved > 0) list.copyWithin(moved, 0, length);
		list.fill(0, 0, moved);
		list.fill(0, moved + length, wider);
		loads.first = least;
		loads.length = wider;
		loads.chance = list;
	}
}

/** Only what stands ready, counted from 0 loads again. */
export function countedAnew(loads: LoadsSoFar): void {
	loads.chance[0] = sumOf(loads.chance, 0, loads.length, 1);
	loads.first = 0;
	loads.length = 1;
}

/** How likely each number of loads is, whatever stands ready. */
export function loadsIn(states: Iterable<LoadsSoFar>): Counts {
	const all = [...states];
	const sum = new Float64Array(Math.max(...all.map(({ first, length }) => first + length)));
	for (const { first, length, chance } of all) addTimes(sum, first, chance, 0, length, 1);
	return { first: 0, chance: sum };
}

function sumOf(chance: Float64Array, from: number, end: number, by: number): number {
	let sum = 0;
	for (let i = from; i < end; i++) sum += (chance[i] as number) * by;
	return sum;
}

/** Numbers `from` to before `end`, at `at` and after. */
function addTimes(
	to: Float64Array,
	at: number,
	chance: Float64Array,
	from: number,
	end: number,
	by: number,
): void {
	for (let i = from; i < end; i++) {
		const place = at + i - from;
		to[place] = (to[place] as number) + (chance[i] as number) * by;
	}
}
