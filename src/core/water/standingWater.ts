import type { Counts } from "../counts/counts.ts";
import { memoize, memoizeByObject } from "../memoize.ts";
import { countedAnew, ListsOfLoads, type LoadsSoFar, loadsIn, NEVER } from "./loadsSoFar.ts";
import { LotsOfWater, type RoundToBoilFor } from "./lotsOfWater.ts";

/** How likely each number of loads boiled so far is, with what stands ready. */
type States = Map<number, LoadsSoFar>;

/** Totals known at once: the weeks of a plan that are alike have one. */
const MOST_KNOWN = 32;

/** A fire that may be lit, or a round, in order of time. */
interface Happening {
	readonly at: number;
	readonly round: number;
	readonly isFire: boolean;
}

/**
 * Loads boiled so that covered, cooled water stands ready for the next round.
 *
 * When the water of a round would have to be lit, a fire is lit unless enough water that
 * will still be in date then stands ready: one lot more than there are rounds until then,
 * each of which may use one. A round that runs uses the oldest lot that is in date. The
 * state is the lots that stand ready, with the loads boiled so far.
 */
export class StandingWater {
	readonly #rounds: readonly RoundToBoilFor[];
	readonly #lots: LotsOfWater;
	readonly #inTime: readonly Happening[];
	readonly #firstOfPlan: number;

	/**
	 * @param rounds in order of time, some days before the plan among them
	 * @param waterMinutes from lighting the fire to cool water
	 * @param lastsMinutes how long cool water may still be used
	 */
	constructor(rounds: readonly RoundToBoilFor[], waterMinutes: number, lastsMinutes: number) {
		this.#rounds = rounds;
		this.#lots = new LotsOfWater(rounds, waterMinutes, lastsMinutes);
		this.#inTime = rounds
			.flatMap(({ at }, round) => [
				{ at: at - waterMinutes, round, isFire: true },
				{ at, round, isFire: false },
			])
			// A round that begins as the fire would be lit may still use the water.
			.sort((a, b) => a.at - b.at || Number(b.isFire) - Number(a.isFire));
		this.#firstOfPlan = this.#inTime.findIndex(
			({ round, isFire }) => isFire && (rounds[round] as RoundToBoilFor).day >= 0,
		);
	}

	/**
	 * Loads boiled for the rounds of all days of the plan.
	 *
	 * @param runs chance that each round runs, and so uses its water
	 */
	readonly total = memoize(
		(runs: readonly number[]): Counts => this.#boiled(runs, false).at(-1) as Counts,
		(runs) => runs,
		MOST_KNOWN,
	);

	/** Loads boiled for the rounds of each day of the plan, each by itself. */
	byDay(runs: readonly number[]): Counts[] {
		return this.#boiled(runs, true);
	}

	#boiled(runs: readonly number[], eachDay: boolean): Counts[] {
		const lists = new ListsOfLoads();
		let states: States = new Map();
		for (const [number, chance] of this.#before(runs)) states.set(number, lists.none(chance));
		const days: Counts[] = [];
		let day = 0;
		for (const { round, isFire } of this.#inTime.slice(this.#firstOfPlan)) {
			const of = this.#rounds[round] as RoundToBoilFor;
			if (eachDay && isFire && of.day !== day) {
				days.push(loadsIn(states.values()));
				for (const loads of states.values()) countedAnew(loads);
				day = of.day;
			}
			states = isFire
				? this.#decided(states, round)
				: this.#passed(states, round, runs[round] as number, lists);
		}
		days.push(loadsIn(states.values()));
		return days;
	}

	/** What stands ready when the first fire of the plan may be lit: the same for its days and for all of them together. */
	readonly #before = memoizeByObject((runs: readonly number[]): ReadonlyMap<number, number> => {
		let ready = new Map([[this.#lots.none, 1]]);
		for (const { round, isFire } of this.#inTime.slice(0, this.#firstOfPlan)) {
			const next: typeof ready = new Map();
			const add = (number: number, chance: number) => {
				if (chance > NEVER) next.set(number, (next.get(number) ?? 0) + chance);
			};
			const run = runs[round] as number;
			for (const [number, chance] of ready) {
				if (isFire) {
					next.set(this.#lots.decided(number, round), chance);
					continue;
				}
				const { used, idle } = this.#lots.passed(number, round);
				add(used, chance * run);
				add(idle, chance * (1 - run));
			}
			ready = next;
		}
		return ready;
	});

	/** Whether a fire is lit for a round. What stands ready stays different where it was. */
	#decided(states: States, round: number): States {
		const next: States = new Map();
		const { loads } = this.#rounds[round] as RoundToBoilFor;
		for (const [number, boiled] of states) {
			const to = this.#lots.decided(number, round);
			if (to !== number) boiled.first += loads;
			next.set(to, boiled);
		}
		return next;
	}

	#passed(states: States, round: number, runs: number, lists: ListsOfLoads): States {
		const next: States = new Map();
		const add = (number: number, loads: LoadsSoFar, by: number) => {
			const known = next.get(number);
			const sum = lists.added(known, loads, by);
			if (sum && sum !== known) next.set(number, sum);
		};
		for (const [number, loads] of states) {
			const { used, idle } = this.#lots.passed(number, round);
			if (runs > 0) add(used, loads, runs);
			if (runs < 1) add(idle, loads, 1 - runs);
		}
		lists.giveBack(states.values());
		return next;
	}
}
