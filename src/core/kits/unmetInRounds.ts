import { type InRounds, type RoundOfPlan, RoundsGoneThrough } from "./roundsGoneThrough.ts";
import { RunOfRounds } from "./runOfRounds.ts";
import { UnmetOfRound } from "./unmetOfRound.ts";

/** More kits than any round takes. */
const MANY = 1000;
const SAFE_PER_1000 = 0.01;

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
	readonly #unmet = new Map<string, UnmetOfRound>();
	readonly #uses: number;
	/** A number of kits with which hardly any need is unmet. */
	#safeFrom = Number.POSITIVE_INFINITY;

	constructor(plan: InRounds) {
		this.#plan = new RoundsGoneThrough(plan);
		const { rounds, uses } = this.#plan;
		for (const round of rounds)
			if (!this.#unmet.has(round.likeness))
				this.#unmet.set(round.likeness, new UnmetOfRound(this.#plan, round));
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

	/** With no uses at all, none is unmet. */
	per1000(kits: number): number {
		if (this.#uses === 0) return 0;
		// More kits never make it worse: below this, those out of date need not be followed.
		const run = new RunOfRounds(kits, this.#plan, kits <= this.#safeFrom);
		const known = new Map<string, Float64Array>();
		let unmet = 0;
		for (const { round, begins } of run.rounds()) {
			const each = known.get(round.likeness) ?? this.#each(kits, round, run);
			known.set(round.likeness, each);
			for (let n = 0; n <= kits; n++) unmet += (begins[n] as number) * (each[n] as number);
		}
		const per1000 = (1000 * unmet) / this.#uses;
		if (per1000 < SAFE_PER_1000) this.#safeFrom = Math.min(this.#safeFrom, kits);
		return per1000;
	}

	#each(kits: number, round: RoundOfPlan, run: RunOfRounds): Float64Array {
		return (this.#unmet.get(round.likeness) as UnmetOfRound).each(kits, run.lapses(round));
	}
}
