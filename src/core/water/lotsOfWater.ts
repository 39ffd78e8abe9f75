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
	readonly #numbers = new Map<string, number>();
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
		const serve = lots.filter((lot) => this.#serves(lot, round)).length;
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
		const oldest = lots.find((lot) => this.#serves(lot, round));
		const kept = lots.filter((lot) => this.#isInDate(lot, round + 1));
		const found = {
			used: this.#numberOf(kept.filter((lot) => lot !== oldest)),
			idle: this.#numberOf(kept),
		};
		passed.set(number, found);
		return found;
	}

	#numberOf(lots: Lots): number {
		const name = lots.join();
		const number = this.#numbers.get(name) ?? this.#lots.push(lots) - 1;
		this.#numbers.set(name, number);
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

type Both = [RoundToBoilFor, RoundToBoilFor];

/** How many rounds before each begin at most so many minutes before it. */
function roundsWithin(rounds: readonly RoundToBoilFor[], minutes: number): number[] {
	let from = 0;
	return rounds.map(({ at }, round) => {
		while ((rounds[from] as RoundToBoilFor).at < at - minutes) from++;
		return round - from;
	});
}
