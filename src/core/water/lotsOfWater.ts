import { Grouped } from "../grouped.ts";

/** A prime that spreads hashes of lists. */
const HASH = 1_000_003;

/** One round of a plan, as far as its water goes. */
export interface RoundToBoilFor {
	/** Minutes after the plan's first midnight. */
	readonly at: number;
	/** Loads of water that are boiled for it. */
	readonly loads: number;
	/** Which day of the plan it belongs to; below 0 before the plan. */
	readonly day: number;
}

/** Water that stands ready, by the round it was made for. */
type Lots = readonly number[];

/** What stands ready after a round that ran, and after one that did not, by their numbers. */
interface AfterRound {
	readonly used: number;
	readonly idle: number;
}

/**
 * Which water may stand ready, and what becomes of it with each fire and each round.
 *
 * However likely each round is, this is the same: it is found once for all levels of births,
 * and what stands ready has a number.
 */
export class LotsOfWater {
	readonly #rounds: readonly RoundToBoilFor[];
	readonly #lastsMinutes: number;
	/** Numbers by their lots' hash: there may be hundreds of lots, whose names would be long to put together. */
	readonly #numbers = new Grouped<number, number>();
	readonly #lots: Lots[] = [];
	readonly #decided: Map<number, number>[];
	readonly #passed: Map<number, AfterRound>[];
	/** Rounds that may still use water before each, once its fire has to be lit. */
	readonly #before: readonly number[];
	/** When nothing stands ready. */
	readonly none: number;

	/**
	 * @param rounds in order of time
	 * @param waterMinutes from lighting the fire to cool water
	 * @param lastsMinutes how long cool water may still be used
	 */
	constructor(rounds: readonly RoundToBoilFor[], waterMinutes: number, lastsMinutes: number) {
		this.#rounds = rounds;
		this.#lastsMinutes = lastsMinutes;
		this.#before = roundsWithin(rounds, waterMinutes);
		this.#decided = rounds.map(() => new Map());
		this.#passed = rounds.map(() => new Map());
		this.none = this.#numberOf([]);
	}

	/** What stands ready once it is decided whether a fire is lit for a round: the same where none is. */
	decided(number: number, round: number): number {
		const decided = this.#decided[round] as Map<number, number>;
		const known = decided.get(number);
		if (known !== undefined) return known;
		const lots = this.#lots[number] as Lots;
		let serve = 0;
		for (const lot of lots) if (this.#serves(lot, round)) serve++;
		const enough = serve > (this.#before[round] as number);
		const found = enough ? number : this.#numberOf([...lots, round]);
		decided.set(number, found);
		return found;
	}

	/** What stands ready after a round, which uses the oldest lot in date. */
	passed(number: number, round: number): AfterRound {
		const passed = this.#passed[round] as Map<number, AfterRound>;
		const known = passed.get(number);
		if (known) return known;
		const lots = this.#lots[number] as Lots;
		// They stand in the order in which they were made.
		const kept = lots.findIndex((lot) => this.#isInDate(lot, round + 1));
		const from = kept < 0 ? lots.length : kept;
		const oldest = lots.findIndex((lot) => this.#serves(lot, round));
		const idle = from === 0 ? number : this.#numberOf(lots.slice(from));
		const used =
			oldest < from
				? idle
				: this.#numberOf([...lots.slice(from, oldest), ...lots.slice(oldest + 1)]);
		const found = { used, idle };
		passed.set(number, found);
		return found;
	}

	#numberOf(lots: Lots): number {
		const hash = lots.reduce((of, lot) => (Math.imul(of, HASH) + lot) | 0, lots.length);
		const known = this.#numbers.of(hash).find((number) => isSame(this.#lots[number] as Lots, lots));
		if (known !== undefined) return known;
		const number = this.#lots.push(lots) - 1;
		this.#numbers.add(hash, number);
		return number;
	}

	#serves(lot: number, round: number): boolean {
		const [made, wanted] = [this.#rounds[lot], this.#rounds[round]] as Both;
		return made.loads >= wanted.loads && this.#isInDate(lot, round);
	}

	/** After the last round nothing needs to be. */
	#isInDate(lot: number, round: number): boolean {
		const wanted = this.#rounds[round];
		const made = this.#rounds[lot] as RoundToBoilFor;
		return wanted !== undefined && wanted.at - made.at <= this.#lastsMinutes;
	}
}

function isSame(some: Lots, others: Lots): boolean {
	return some.length === others.length && some.every((lot, i) => lot === others[i]);
}

type Both = [RoundToBoilFor, RoundToBoilFor];

/** How many rounds before each begin at most so many minutes before it. */
function roundsWithin(rounds: readonly RoundToBoilFor[], minutes: number): number[] {
	let from = 0;
	return rounds.map(({ at }, round) => {
		while ((rounds[from] as RoundToBoilFor).at < at - minutes) from++;
		return round - from;
	});
}
