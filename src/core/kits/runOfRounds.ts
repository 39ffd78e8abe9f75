import { poissonTerms } from "../counts/poisson.ts";
import { areAlike } from "./areAlike.ts";
import { cappedUses } from "./cappedUses.ts";
import { kitsThatCame, renewalsOfPlan } from "./kitsThatCame.ts";
import type { RenewalsOfDay } from "./renewalsOfDay.ts";
import type { RenewedGiven } from "./renewedGiven.ts";
import type { RoundOfPlan, RoundsGoneThrough } from "./roundsGoneThrough.ts";

/** A state is settled when no chance changes more than this from one day to the next. */
const SETTLED = 1e-10;
const MOST_DAYS = 200;
/** Kits left over that are as likely as before to within this are taken as the same. */
const ALIKE = 1e-12;
/** More kits than are ever this likely to come, or to be left over, are not followed: chances that go on shrinking would make the list longer each round. */
const UNSEEN = 1e-20;

/** Kits used from the start of a round to midnight, and those that go out of date then. */
export interface Lapses {
	readonly used: Float64Array;
	readonly given: RenewedGiven;
}

/** How likely each number of kits is to wait when a round begins, as far as any comes; those beyond the kits count as all. */
export interface RoundBegun {
	readonly begins: Float64Array;
	/** The most kits it takes. */
	readonly most: number;
	readonly leaves: LeftOver;
}

/** How likely each number of kits is to be left over by a round, and how rounds begin after it. */
interface LeftOver {
	readonly chance: Float64Array;
	readonly next: Map<number, RoundBegun>;
}

/**
 * The rounds of a plan gone through one by one with a number of kits. The state is the
 * number of kits that wait when a round begins; what a round cannot take waits for the next.
 *
 * Rounds that are alike and begin alike are the same object: the weeks of a long plan cost
 * what its first weeks do.
 */
export class RunOfRounds {
	readonly #kits: number;
	readonly #plan: RoundsGoneThrough;
	readonly #renewals: RenewalsOfDay | undefined;
	/** By the rounds' likeness. */
	readonly #came: Float64Array[] = [];
	readonly #nothing: LeftOver = { chance: Float64Array.of(1), next: new Map() };
	/** What was left over so far, by how likely nothing is, roughly. */
	readonly #known = new Map<number, LeftOver>();

	/** @param renewing false where only uses count */
	constructor(kits: number, plan: RoundsGoneThrough, renewing = true) {
		this.#kits = kits;
		this.#plan = plan;
		this.#renewals = renewing ? renewalsOfPlan(kits, plan) : undefined;
	}

	/** How each round of the plan begins, in their order. */
	rounds(): RoundBegun[] {
		let left = this.#settled();
		return this.#plan.rounds.map((round) => {
			const begun = this.#begin(left, round);
			left = begun.leaves;
			return begun;
		});
	}

	/** What goes out of date at the midnight after a round; undefined where nothing does. */
	lapses({ start, midnight }: RoundOfPlan): Lapses | undefined {
		const whenExpired = this.#plan.plan.life?.renewal === "when_expired";
		if (!whenExpired || !this.#renewals || midnight === undefined) return undefined;
		const used = poissonTerms(this.#plan.uses.between(start, midnight));
		const [given] = this.#renewals.given;
		return { used: cappedUses(this.#kits, used), given: given as RenewedGiven };
	}

	/** Kits left over by the last round of the day before the plan, if many days were like its first. */
	#settled(): LeftOver {
		const first = this.#plan.rounds.slice(0, this.#plan.plan.starts.length);
		let left = this.#nothing;
		for (let day = 0; day < MOST_DAYS; day++) {
			let after = left;
			for (const round of first) after = this.#begin(after, round).leaves;
			const isSettled = after === left || areAlike(after.chance, left.chance, SETTLED);
			left = after;
			if (isSettled) break;
		}
		return left;
	}

	#begin(left: LeftOver, round: RoundOfPlan): RoundBegun {
		const known = left.next.get(round.likeness);
		if (known) return known;
		const begins = this.#waiting(left.chance, this.#cameTo(round));
		const most = this.#plan.mostIn(round, this.#kits);
		const begun = { begins, most, leaves: this.#leftOver(begins, most) };
		left.next.set(round.likeness, begun);
		return begun;
	}

	#waiting(left: Float64Array, came: Float64Array): Float64Array {
		if (left === this.#nothing.chance) return came;
		const kits = this.#kits;
		const begins = new Float64Array(Math.min(kits, left.length + came.length - 2) + 1);
		let first = 0;
		while (came[first] === 0) first++;
		for (let l = 0; l < left.length; l++) {
			const chance = left[l] as number;
			const below = Math.min(came.length - 1, kits - l - 1);
			for (let n = first; n <= below; n++)
				begins[l + n] = (begins[l + n] as number) + chance * (came[n] as number);
			for (let n = Math.max(first, below + 1); n < came.length; n++)
				begins[kits] = (begins[kits] as number) + chance * (came[n] as number);
		}
		return begins;
	}

	#cameTo(round: RoundOfPlan): Float64Array {
		const known = this.#came[round.likeness];
		if (known) return known;
		const came = seen(kitsThatCame(this.#kits, round, this.#plan, this.#renewals));
		this.#came[round.likeness] = came;
		return came;
	}

	/** What a round that takes `most` leaves; the same as before where it is alike. */
	#leftOver(begins: Float64Array, most: number): LeftOver {
		const end = endOfSeen(begins);
		if (end <= most + 1) return this.#nothing;
		const chance = begins.slice(most, end);
		for (let n = 0; n < most; n++) chance[0] = (chance[0] as number) + (begins[n] as number);
		const name = Math.round((chance[0] as number) * 1e9) * 1000 + chance.length;
		const known = this.#known.get(name);
		if (known && areAlike(known.chance, chance, ALIKE)) return known;
		const left: LeftOver = { chance, next: new Map() };
		this.#known.set(name, left);
		return left;
	}
}

/** With many kits most numbers never come: going through them took most of the time. */
function seen(chances: Float64Array): Float64Array {
	const end = endOfSeen(chances);
	return end === chances.length ? chances : chances.subarray(0, end);
}

function endOfSeen(chances: Float64Array): number {
	let end = chances.length;
	while (end > 1 && (chances[end - 1] as number) <= UNSEEN) end--;
	return end;
}
