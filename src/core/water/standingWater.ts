import type { Counts } from "../counts/counts.ts";
import { memoize, memoizeByObject } from "../memoize.ts";
import { LotsOfWater, type RoundToBoilFor } from "./lotsOfWater.ts";

/** How likely each number of loads boiled so far is, with what stands ready. */
type States = Map<number, Counts>;

/** Less likely states are let go. */
const NEVER = 1e-15;
/** Numbers of loads less likely than this are seen in no result. */
const UNSEEN = 1e-30;

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
		let states = this.#before(runs);
		const days: Counts[] = [];
		let day = 0;
		for (const { round, isFire } of this.#inTime.slice(this.#firstOfPlan)) {
			const of = this.#rounds[round] as RoundToBoilFor;
			if (eachDay && isFire && of.day !== day) {
				days.push(loadsIn(states));
				states = withoutLoads(states);
				day = of.day;
			}
			states = isFire
				? this.#decided(states, round)
				: this.#passed(states, round, runs[round] as number);
		}
		days.push(loadsIn(states));
		return days;
	}

	/** What stands ready when the first fire of the plan may be lit: the same for its days and for all of them together. */
	readonly #before = memoizeByObject((runs: readonly number[]): States => {
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
		return new Map([...ready].map(([number, chance]) => [number, noneBoiled(chance)]));
	});

	/** Whether a fire is lit for a round. What stands ready stays different where it was. */
	#decided(states: States, round: number): States {
		const next: States = new Map();
		const { loads } = this.#rounds[round] as RoundToBoilFor;
		for (const [number, { first, chance }] of states) {
			const to = this.#lots.decided(number, round);
			next.set(to, { first: first + (to === number ? 0 : loads), chance });
		}
		return next;
	}

	#passed(states: States, round: number, runs: number): States {
		const next: States = new Map();
		for (const [number, counts] of states) {
			const { used, idle } = this.#lots.passed(number, round);
			if (runs > 0) add(next, used, counts, runs);
			if (runs < 1) add(next, idle, counts, 1 - runs);
		}
		return next;
	}
}

/** So far no load, this likely. */
const noneBoiled = (chance: number): Counts => ({ first: 0, chance: Float64Array.of(chance) });

/** Adds a part of what may have been boiled to a state: into its own list, where it has room. */
function add(states: States, number: number, part: Counts, by: number): void {
	const { first, chance } = withoutUnseen(part, by);
	let all = 0;
	for (let i = 0; i < chance.length; i++) all += (chance[i] as number) * by;
	if (all <= NEVER) return;
	const known = states.get(number);
	const sum = known ? withRoom(known, first, first + chance.length) : emptyFor(first, chance);
	if (sum !== known) states.set(number, sum);
	const from = first - sum.first;
	for (let i = 0; i < chance.length; i++)
		sum.chance[from + i] = (sum.chance[from + i] as number) + (chance[i] as number) * by;
}

function withoutUnseen(part: Counts, by: number): Counts {
	const { first, chance } = part;
	let from = 0;
	let to = chance.length;
	while (from < to && (chance[from] as number) * by < UNSEEN) from++;
	while (to > from && (chance[to - 1] as number) * by < UNSEEN) to--;
	if (to - from === chance.length) return part;
	return { first: first + from, chance: chance.subarray(from, to) };
}

const emptyFor = (first: number, { length }: Float64Array): Counts => ({
	first,
	chance: new Float64Array(length),
});

function withRoom(counts: Counts, from: number, end: number): Counts {
	const { first, chance } = counts;
	if (from >= first && end <= first + chance.length) return counts;
	const least = Math.min(first, from);
	const wider = new Float64Array(Math.max(first + chance.length, end) - least);
	wider.set(chance, first - least);
	return { first: least, chance: wider };
}

function loadsIn(states: States): Counts {
	const all = [...states.values()];
	const sum = new Float64Array(Math.max(...all.map(({ first, chance }) => first + chance.length)));
	for (const { first, chance } of all)
		for (let i = 0; i < chance.length; i++)
			sum[first + i] = (sum[first + i] as number) + (chance[i] as number);
	return { first: 0, chance: sum };
}

/** The same states, counted from 0 again. */
function withoutLoads(states: States): States {
	return new Map(
		[...states].map(([number, { chance }]) => [
			number,
			noneBoiled(chance.reduce((sum, p) => sum + p, 0)),
		]),
	);
}
