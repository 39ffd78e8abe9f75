import { kitsThatCame, renewalsOfPlan, usedAndLapsed } from "./kitsThatCame.ts";
import type { RenewalsOfDay } from "./renewalsOfDay.ts";
import { type InRounds, type RoundOfPlan, RoundsGoneThrough } from "./roundsGoneThrough.ts";
import { type Lapses, UnmetOfRound } from "./unmetOfRound.ts";

/** A state is settled when no chance changes more than this from one day to the next. */
const SETTLED = 1e-12;
const MOST_DAYS = 400;

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

	constructor(plan: InRounds) {
		this.#plan = new RoundsGoneThrough(plan);
		const { rounds, uses } = this.#plan;
		for (const round of rounds)
			if (!this.#unmet.has(round.likeness))
				this.#unmet.set(round.likeness, new UnmetOfRound(this.#plan, round));
		const [first, last] = [rounds[0] as RoundOfPlan, rounds.at(-1) as RoundOfPlan];
		this.#uses = uses.between(first.start, last.next);
	}

	/** With no uses at all, none is unmet. */
	per1000(kits: number): number {
		if (this.#uses === 0) return 0;
		const run = new RunOfRounds(kits, this.#plan, this.#unmet);
		return (1000 * run.unmet()) / this.#uses;
	}
}

interface Known {
	readonly came: Float64Array;
	readonly unmet: Float64Array;
	readonly most: number;
}

class RunOfRounds {
	readonly #kits: number;
	readonly #plan: RoundsGoneThrough;
	readonly #unmet: ReadonlyMap<string, UnmetOfRound>;
	readonly #renewals: RenewalsOfDay | undefined;
	readonly #known = new Map<string, Known>();

	constructor(kits: number, plan: RoundsGoneThrough, unmet: ReadonlyMap<string, UnmetOfRound>) {
		this.#kits = kits;
		this.#plan = plan;
		this.#unmet = unmet;
		this.#renewals = renewalsOfPlan(kits, plan);
	}

	unmet(): number {
		let left: Float64Array = this.#settled();
		let unmet = 0;
		for (const round of this.#plan.rounds) {
			const known = this.#of(round);
			const begins = this.#begins(left, known);
			for (let n = 0; n <= this.#kits; n++)
				unmet += (begins[n] as number) * (known.unmet[n] as number);
			left = leftOver(begins, known.most);
		}
		return unmet;
	}

	/** Kits left over by the last round of the day before the plan, if many days were like its first. */
	#settled(): Float64Array {
		const first = this.#plan.rounds.slice(0, this.#plan.plan.starts.length);
		let left: Float64Array = Float64Array.of(1);
		for (let day = 0; day < MOST_DAYS; day++) {
			let after: Float64Array = left;
			for (const round of first) {
				const known = this.#of(round);
				after = leftOver(this.#begins(after, known), known.most);
			}
			const moved = after.some((chance, i) => Math.abs(chance - (left[i] ?? 0)) > SETTLED);
			left = after;
			if (!moved) break;
		}
		return left;
	}

	/** How likely each number is to wait when a round begins. */
	#begins(left: Float64Array, { came }: Known): Float64Array {
		if (left.length === 1) return came;
		const begins = new Float64Array(this.#kits + 1);
		left.forEach((chance, l) => {
			came.forEach((other, n) => {
				const at = Math.min(this.#kits, l + n);
				begins[at] = (begins[at] as number) + chance * other;
			});
		});
		return begins;
	}

	#of(round: RoundOfPlan): Known {
		const known = this.#known.get(round.likeness);
		if (known) return known;
		const made = this.#make(round);
		this.#known.set(round.likeness, made);
		return made;
	}

	#make(round: RoundOfPlan): Known {
		const kits = this.#kits;
		const { life } = this.#plan.plan;
		const unmet = this.#unmet.get(round.likeness) as UnmetOfRound;
		return {
			came: kitsThatCame(kits, round, life, this.#renewals),
			unmet: unmet.each(kits, this.#lapses(round)),
			most: this.#plan.mostIn(round, kits),
		};
	}

	#lapses({ start, midnight }: RoundOfPlan): Lapses | undefined {
		const whenExpired = this.#plan.plan.life?.renewal === "when_expired";
		if (!whenExpired || !this.#renewals || midnight === undefined) return undefined;
		const uses = this.#plan.uses.between(start, midnight);
		return usedAndLapsed(this.#kits, uses, this.#renewals);
	}
}

/** How likely each number is to be left over by a round that takes `most`; one number where none ever is. */
function leftOver(begins: Float64Array, most: number): Float64Array {
	if (most >= begins.length - 1) return Float64Array.of(1);
	const left = begins.slice(most);
	for (let n = 0; n < most; n++) left[0] = (left[0] as number) + (begins[n] as number);
	return left;
}
