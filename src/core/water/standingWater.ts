import type { Counts } from "../counts/counts.ts";

/** One round of a plan, as far as its water goes. */
export interface RoundToBoilFor {
	/** Minutes after the plan's first midnight. */
	readonly at: number;
	/** Chance that it runs, and so uses its water. */
	readonly runs: number;
	/** Loads of water that are boiled for it. */
	readonly loads: number;
	/** Which day of the plan it belongs to; below 0 before the plan. */
	readonly day: number;
}

/** Water that stands ready, by the round it was made for. */
type Lots = readonly number[];

interface State {
	readonly lots: Lots;
	/** How likely it is with each number of loads boiled so far. */
	readonly chance: Float64Array;
}

/** Less likely states are let go. */
const NEVER = 1e-15;

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
	readonly #waterMinutes: number;
	readonly #lastsMinutes: number;

	/**
	 * @param rounds in order of time, some days before the plan among them
	 * @param waterMinutes from lighting the fire to cool water
	 * @param lastsMinutes how long cool water may still be used
	 */
	constructor(rounds: readonly RoundToBoilFor[], waterMinutes: number, lastsMinutes: number) {
		this.#rounds = rounds;
		this.#waterMinutes = waterMinutes;
		this.#lastsMinutes = lastsMinutes;
	}

	/** Loads boiled for the rounds of all days of the plan. */
	total(): Counts {
		return this.#boiled(false).at(-1) ?? none;
	}

	/** Loads boiled for the rounds of each day of the plan, each by itself. */
	byDay(): Counts[] {
		return this.#boiled(true);
	}

	#boiled(eachDay: boolean): Counts[] {
		let states = new Map<string, State>([["", { lots: [], chance: Float64Array.of(1) }]]);
		const days: Counts[] = [];
		const inTime = this.#rounds
			.flatMap(({ at }, round) => [
				{ at: at - this.#waterMinutes, round, isFire: true },
				{ at, round, isFire: false },
			])
			// A round that begins as the fire would be lit may still use the water.
			.sort((a, b) => a.at - b.at || Number(b.isFire) - Number(a.isFire));
		let day = Number.NEGATIVE_INFINITY;
		for (const { round, isFire } of inTime) {
			const of = this.#rounds[round] as RoundToBoilFor;
			if (isFire && of.day !== day) {
				if (day >= 0 && eachDay) days.push(loadsIn(states));
				if (of.day === 0 || (eachDay && of.day > 0)) states = withoutLoads(states);
				day = of.day;
			}
			states = isFire ? this.#decided(states, round) : this.#used(states, round);
		}
		days.push(loadsIn(states));
		return days;
	}

	/** Whether a fire is lit for a round. */
	#decided(states: ReadonlyMap<string, State>, round: number): Map<string, State> {
		const next = new Map<string, State>();
		const { at, loads } = this.#rounds[round] as RoundToBoilFor;
		const before = this.#rounds.filter(
			(other, i) => i < round && other.at >= at - this.#waterMinutes,
		).length;
		for (const { lots, chance } of states.values()) {
			const enough = lots.filter((lot) => this.#serves(lot, round)).length > before;
			if (enough) add(next, lots, chance, 0);
			else add(next, [...lots, round], chance, loads);
		}
		return next;
	}

	#used(states: ReadonlyMap<string, State>, round: number): Map<string, State> {
		const next = new Map<string, State>();
		const { runs } = this.#rounds[round] as RoundToBoilFor;
		const isKept = (lot: number) => lot > round || this.#isInDate(lot, round + 1);
		for (const { lots, chance } of states.values()) {
			const oldest = lots.find((lot) => lot <= round && this.#serves(lot, round));
			const left = lots.filter((lot) => lot !== oldest).filter(isKept);
			if (runs > 0) add(next, left, scaled(chance, runs), 0);
			if (runs < 1) add(next, lots.filter(isKept), scaled(chance, 1 - runs), 0);
		}
		return next;
	}

	#serves(lot: number, round: number): boolean {
		const [made, wanted] = [this.#rounds[lot], this.#rounds[round]];
		return (made?.loads ?? 0) >= (wanted?.loads ?? 0) && this.#isInDate(lot, round);
	}

	#isInDate(lot: number, round: number): boolean {
		const [made, wanted] = [this.#rounds[lot], this.#rounds[round]];
		return made !== undefined && wanted !== undefined && wanted.at - made.at <= this.#lastsMinutes;
	}
}

const none: Counts = { first: 0, chance: Float64Array.of(1) };

function add(states: Map<string, State>, lots: Lots, chance: Float64Array, loads: number): void {
	const key = lots.join();
	const sum = new Float64Array(
		Math.max(states.get(key)?.chance.length ?? 0, chance.length + loads),
	);
	states.get(key)?.chance.forEach((p, i) => {
		sum[i] = p;
	});
	let all = 0;
	chance.forEach((p, i) => {
		sum[i + loads] = (sum[i + loads] as number) + p;
		all += p;
	});
	if (all > NEVER) states.set(key, { lots, chance: sum });
}

function scaled(chance: Float64Array, by: number): Float64Array {
	return chance.map((p) => p * by);
}

function loadsIn(states: ReadonlyMap<string, State>): Counts {
	const most = Math.max(...[...states.values()].map(({ chance }) => chance.length));
	const chance = new Float64Array(most);
	for (const state of states.values())
		state.chance.forEach((p, i) => {
			chance[i] = (chance[i] as number) + p;
		});
	return { first: 0, chance };
}

/** The same states, counted from 0 again. */
function withoutLoads(states: ReadonlyMap<string, State>): Map<string, State> {
	return new Map(
		[...states].map(([key, { lots, chance }]) => [
			key,
			{ lots, chance: Float64Array.of(chance.reduce((sum, p) => sum + p, 0)) },
		]),
	);
}
