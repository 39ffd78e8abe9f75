import type { Counts } from "../counts/counts.ts";
import { poissonTerms } from "../counts/poisson.ts";
import { DayClock, type HourShares } from "../rounds/dayClock.ts";
import type { RoundLength } from "../rounds/roundLength.ts";
import { mostKitsWithin } from "../rounds/roundLength.ts";
import { MINUTES_PER_DAY } from "../values/clock.ts";
import type { LikeDay, ReadyLife } from "./renewalSteps.ts";

/** Everything that decides when the kits used on the days of a plan are ready again. */
export interface InRounds {
	readonly kind: "in_rounds";
	/** Starts of the rounds of a day, minutes after midnight, earliest first. */
	readonly starts: readonly number[];
	/** What makes a round long. */
	readonly length: RoundLength;
	/** Minutes from a round's start to its kits being ready, as the plan counts on. */
	readonly plannedMinutes: number;
	/** Mean uses of each day of the plan. */
	readonly usesPerDay: readonly number[];
	readonly hourShares: HourShares;
	/** How long a ready kit may be used; null where it never goes out of date. */
	readonly life: ReadyLife | null;
	/** A kit used later than this many minutes before a round waits for the next one; 0 where left out. */
	readonly waterMinutes?: number;
}

/** A round of the plan, and the time until the next one begins. */
export interface RoundOfPlan {
	/** Which round of its day, from 0. */
	readonly index: number;
	/** Minutes from the plan's first midnight. */
	readonly start: number;
	readonly next: number;
	/** The midnight between the two, for the last round of a day. */
	readonly midnight: number | undefined;
	/** Of the uses that came, those before the day's midnight. */
	readonly cameBeforeMidnight: number;
	/** Mean uses since the start of the round before; where water is waited for, since the last moment for that round. */
	readonly came: number;
	/** Mean uses too late for this round: their water is not cool. */
	readonly late: number;
	/** Rounds with the same number are alike in everything; 0, 1, … in the order in which they first come. */
	readonly likeness: number;
}

/** The rounds of a plan one after the other; the day before it is like its first, the day after like its last. */
export class RoundsGoneThrough {
	readonly uses: DayClock;
	readonly rounds: readonly RoundOfPlan[];
	readonly plan: InRounds;
	readonly #rates: readonly number[];
	readonly #likenesses = new Map<number, number>();
	readonly #alike: RoundOfPlan[] = [];
	readonly #used = new Map<number, Counts>();

	constructor(plan: InRounds) {
		this.plan = plan;
		this.uses = new DayClock(plan.usesPerDay, plan.hourShares);
		const numbers = new Map<number, number>();
		this.#rates = plan.usesPerDay.map((uses) => {
			const number = numbers.get(uses) ?? numbers.size;
			numbers.set(uses, number);
			return number;
		});
		this.rounds = plan.usesPerDay.flatMap((_, day) =>
			plan.starts.map((_start, index) => this.#round(day, index)),
		);
	}

	#round(day: number, index: number): RoundOfPlan {
		const { starts, usesPerDay } = this.plan;
		const midnight = day * MINUTES_PER_DAY;
		const start = midnight + (starts[index] as number);
		const isLast = index === starts.length - 1;
		const ofNext = isLast ? (starts[0] as number) + MINUTES_PER_DAY : (starts[index + 1] as number);
		const ofLast =
			index === 0 ? (starts.at(-1) as number) - MINUTES_PER_DAY : (starts[index - 1] as number);
		const water = this.plan.waterMinutes ?? 0;
		const earlier = Math.ceil(water / MINUTES_PER_DAY);
		const days = usesPerDay.length;
		let around = 0;
		for (let of = day - 1 - earlier; of <= day + 1; of++)
			around = around * days + (this.#rates[Math.min(Math.max(of, 0), days - 1)] as number);
		const name = around * starts.length + index;
		const likeness = this.#likenesses.get(name) ?? this.#likenesses.size;
		this.#likenesses.set(name, likeness);
		// What came to rounds that are alike is reckoned from the first of them: the others would differ by rounding.
		const alike = this.#alike[likeness];
		const from = midnight + ofLast - water;
		const before = Math.min(midnight, start - water);
		const round = {
			index,
			start,
			next: midnight + ofNext,
			midnight: isLast ? midnight + MINUTES_PER_DAY : undefined,
			cameBeforeMidnight: alike?.cameBeforeMidnight ?? this.uses.between(from, before),
			came: alike?.came ?? this.uses.between(from, start - water),
			late: alike?.late ?? this.uses.between(start - water, start),
			likeness,
		};
		this.#alike[likeness] = round;
		return round;
	}

	/** How likely each number of uses is to have come since the start of the round before. */
	usedBefore({ likeness, came }: RoundOfPlan): Counts {
		const known = this.#used.get(likeness) ?? poissonTerms(came);
		this.#used.set(likeness, known);
		return known;
	}

	/** The most kits, of those there are, with which a round ends before the next one begins. */
	mostIn({ start, next }: RoundOfPlan, kits: number): number {
		return mostKitsWithin(this.plan.length, next - start, kits);
	}

	/** The day all days of the plan are like on average. */
	likeDay(): LikeDay {
		const { usesPerDay, hourShares, starts, plannedMinutes } = this.plan;
		const sum = usesPerDay.reduce((all, uses) => all + uses, 0);
		// Plans of different lengths whose days are alike differ by rounding only.
		const mean = Number((sum / usesPerDay.length).toPrecision(9));
		const clock = new DayClock([mean], hourShares);
		return {
			starts,
			uses: starts.map((start, i) => clock.between(start, starts[i + 1] ?? MINUTES_PER_DAY)),
			usesAfterMidnight: clock.between(0, starts[0] as number),
			plannedMinutes,
		};
	}
}
