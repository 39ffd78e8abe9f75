import { allEndAtMidnight } from "./renewalsOfDay.ts";
import { type InRounds, type RoundOfPlan, RoundsGoneThrough } from "./roundsGoneThrough.ts";
import { type RoundBegun, RunOfRounds } from "./runOfRounds.ts";
import { UnmetOfRound } from "./unmetOfRound.ts";

/** More kits than any round takes. */
const MANY = 1000;
/** By so much sums of the same may differ. */
const ROUNDING = 1e-9;

/**
 * Uses that find no kit ready, of 1,000, where kits come back at the end of rounds.
 *
 * The state is the number of kits that wait when a round begins; the rounds of the plan are
 * gone through one by one. A round takes what waits, at most what ends before the next one,
 * lasts as long as that number asks, and gives all back at its end. A need that finds none
 * ready still sends a kit to the next round; beyond the kits there are, such needs take
 * none of its minutes. The uses are exact; kits gone out of date follow `renewalsOfDay`.
 */
export class UnmetInRounds {
	readonly #plan: RoundsGoneThrough;
	/** By the rounds' likeness. */
	readonly #unmet: UnmetOfRound[] = [];
	readonly #uses: number;

	constructor(plan: InRounds) {
		this.#plan = new RoundsGoneThrough(plan);
		const { rounds, uses } = this.#plan;
		for (const round of rounds) this.#unmet[round.likeness] ??= new UnmetOfRound(this.#plan, round);
		const [first, last] = [rounds[0] as RoundOfPlan, rounds.at(-1) as RoundOfPlan];
		this.#uses = uses.between(first.start, last.next);
	}

	/** Whether the rounds can take all that comes, whatever the kits. */
	get keepsUp(): boolean {
		const { rounds, plan } = this.#plan;
		const day = rounds.slice(0, plan.starts.length);
		const ofDay = day.reduce((sum, round) => sum + this.#plan.mostIn(round, MANY), 0);
		const room = plan.usesPerDay.length * ofDay;
		return this.#uses < 0.99 * room;
	}

	/**
	 * With no uses at all, none is unmet.
	 *
	 * @param renewing false leaves out kits gone out of date: never more is unmet without them
	 */
	per1000(kits: number, renewing = true): number {
		if (this.#uses === 0) return 0;
		const run = new RunOfRounds(kits, this.#plan, renewing);
		const known: KnownRound[] = [];
		let unmet = 0;
		run.rounds().forEach((begun, i) => {
			const round = this.#plan.rounds[i] as RoundOfPlan;
			const before = known[round.likeness];
			if (before?.begun === begun) {
				unmet += before.unmet;
				return;
			}
			const each = before?.each ?? this.#each(kits, round, run);
			const ofRound = meanOf(each, begun.begins);
			known[round.likeness] = { each, begun, unmet: ofRound };
			unmet += ofRound;
		});
		return (1000 * unmet) / this.#uses;
	}

	/**
	 * Never more than `per1000`, with so many kits or more, and found at once: kits that keep for
	 * a day only are all gone from midnight until the next round. 0 where they keep longer.
	 */
	leastWithMore(kits: number): number {
		const { life } = this.#plan.plan;
		if (this.#uses === 0 || !life || !allEndAtMidnight(kits, this.#plan.likeDay(), life)) return 0;
		let gone = 0;
		for (const { midnight, next } of this.#plan.rounds)
			if (midnight !== undefined) gone += this.#plan.uses.between(midnight, next);
		return (1000 * gone * (1 - ROUNDING)) / this.#uses;
	}

	#each(kits: number, round: RoundOfPlan, run: RunOfRounds): (begins: number) => number {
		return (this.#unmet[round.likeness] as UnmetOfRound).each(kits, run.lapses(round));
	}
}

/** Of rounds that are alike, how the last of them began and what goes unmet in it; and by the kits with which any begins. */
interface KnownRound {
	readonly each: (begins: number) => number;
	readonly begun: RoundBegun;
	readonly unmet: number;
}

/** What never is costs nothing: with many kits most numbers never come. */
function meanOf(each: (count: number) => number, chances: Float64Array): number {
	let mean = 0;
	for (let i = 0; i < chances.length; i++) {
		const chance = chances[i] as number;
		if (chance > 0) mean += each(i) * chance;
	}
	return mean;
}
