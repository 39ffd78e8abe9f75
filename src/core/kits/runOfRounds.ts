import { kitsThatCame, renewalsOfPlan, usedAndLapsed } from "./kitsThatCame.ts";
import type { RenewalsOfDay } from "./renewalsOfDay.ts";
import type { RoundOfPlan, RoundsGoneThrough } from "./roundsGoneThrough.ts";

/** A state is settled when no chance changes more than this from one day to the next. */
const SETTLED = 1e-10;
const MOST_DAYS = 200;

/** Kits used since a round began and kits gone out of date by midnight: row u, of kits + 1 numbers. */
export type Lapses = Float64Array;

/** A round with how likely each number of kits is to wait when it begins; those beyond the kits count as all. */
export interface RoundBegun {
	readonly round: RoundOfPlan;
	readonly begins: Float64Array;
	/** The most kits it takes. */
	readonly most: number;
}

/**
 * The rounds of a plan gone through one by one with a number of kits. The state is the
 * number of kits that wait when a round begins; what a round cannot take waits for the next.
 */
export class RunOfRounds {
	readonly #kits: number;
	readonly #plan: RoundsGoneThrough;
	readonly #renewals: RenewalsOfDay | undefined;
	readonly #came = new Map<string, Float64Array>();

	/** @param renewing false where kits gone out of date can no longer change anything */
	constructor(kits: number, plan: RoundsGoneThrough, renewing = true) {
		this.#kits = kits;
		this.#plan = plan;
		this.#renewals = renewing ? renewalsOfPlan(kits, plan) : undefined;
	}

	rounds(): RoundBegun[] {
		let left = this.#settled();
		return this.#plan.rounds.map((round) => {
			const begun = this.#begin(left, round);
			left = leftOver(begun);
			return begun;
		});
	}

	/** What goes out of date at the midnight after a round; undefined where nothing does. */
	lapses({ start, midnight }: RoundOfPlan): Lapses | undefined {
		const whenExpired = this.#plan.plan.life?.renewal === "when_expired";
		if (!whenExpired || !this.#renewals || midnight === undefined) return undefined;
		return usedAndLapsed(this.#kits, this.#plan.uses.between(start, midnight), this.#renewals);
	}

	/** Kits left over by the last round of the day before the plan, if many days were like its first. */
	#settled(): Float64Array {
		const first = this.#plan.rounds.slice(0, this.#plan.plan.starts.length);
		let left: Float64Array = Float64Array.of(1);
		for (let day = 0; day < MOST_DAYS; day++) {
			let after = left;
			for (const round of first) after = leftOver(this.#begin(after, round));
			const moved = after.some((chance, i) => Math.abs(chance - (left[i] ?? 0)) > SETTLED);
			left = after;
			if (!moved) break;
		}
		return left;
	}

	#begin(left: Float64Array, round: RoundOfPlan): RoundBegun {
		const came = this.#cameTo(round);
		const most = this.#plan.mostIn(round, this.#kits);
		if (left.length === 1) return { round, begins: came, most };
		const begins = new Float64Array(this.#kits + 1);
		// With many kits most numbers never come: going through them took most of the time.
		const first = came.findIndex((chance) => chance > 0);
		const last = came.findLastIndex((chance) => chance > 0);
		for (let l = 0; l < left.length; l++) {
			const chance = left[l] as number;
			if (chance === 0) continue;
			for (let n = first; n <= last; n++) {
				const at = Math.min(this.#kits, l + n);
				begins[at] = (begins[at] as number) + chance * (came[n] as number);
			}
		}
		return { round, begins, most };
	}

	#cameTo(round: RoundOfPlan): Float64Array {
		const known = this.#came.get(round.likeness);
		if (known) return known;
		const came = kitsThatCame(this.#kits, round, this.#plan.plan.life, this.#renewals);
		this.#came.set(round.likeness, came);
		return came;
	}
}

/** How likely each number is to be left over by a round that takes `most`; one number where none ever is. */
function leftOver({ begins, most }: RoundBegun): Float64Array {
	if (most >= begins.length - 1) return Float64Array.of(1);
	const left = begins.slice(most);
	for (let n = 0; n < most; n++) left[0] = (left[0] as number) + (begins[n] as number);
	return left;
}
