import { always } from "../counts/counts.ts";
import { poisson } from "../counts/poisson.ts";
import { memoize } from "../memoize.ts";
import { cappedUses } from "./cappedUses.ts";
import { canFollowEveryKit, EveryKitsEnd } from "./everyKitsEnd.ts";
import { expiriesPerDay } from "./expiriesPerDay.ts";
import { OldestKits } from "./oldestKits.ts";
import {
	type LikeDay,
	type ReadyLife,
	type RenewalStep,
	renewalSteps,
	renews,
	roughly,
	together,
} from "./renewalSteps.ts";
import { givenApart, givenInTable, type RenewedGiven } from "./renewedGiven.ts";
import { renewedOverDays } from "./renewedOverDays.ts";
import { settle } from "./settle.ts";

/**
 * Kits renewed, by the kits used since the start of the round before (when_expired: from the
 * day's last round to midnight).
 */
export interface RenewalsOfDay {
	readonly kits: number;
	/** in_time: for each round of the day; when_expired: once, for midnight. */
	readonly given: readonly RenewedGiven[];
	/** Mean renewals of a day. */
	readonly perDay: number;
}

/** Where kits are used before they go out of date. */
const MOST_DAYS_IF_USED = 4;
/** So many kits are followed whatever their life. */
const ALWAYS_FOLLOWED = 14;
/** Kits times days to end on: of a shorter life more kits are followed, as more of them end together. */
const MOST_PLACES = 9 * ALWAYS_FOLLOWED;
/** With a longer life kits are renewed one by one. */
const MOST_LIFE_DAYS = 21;
/** Renewals rarer than this beside the uses change nothing. */
const RARE = 1e-7;

/**
 * How many kits are renewed, unused, on a day like all others.
 *
 * Gone through step by step, day after day, until it settles: first roughly, with alike
 * rounds as one, and from there as it is. With few kits every kit's
 * last day is followed, which is exact; with more, that of the oldest (`OldestKits`). With
 * very many, only their number is worked out (`renewedOfMany`).
 */
export function renewalsOfDay(kits: number, day: LikeDay, life: ReadyLife): RenewalsOfDay {
	const uses = usesOf(day);
	const steps = renewalSteps(day, life);
	if (renewedAtOnce(kits, uses, life.days - 2) < RARE * uses) return oneByOne(kits, steps, 0);
	if (life.days > MOST_LIFE_DAYS) return oneByOne(kits, steps, longLife(kits, uses, life));
	if (allEndAtMidnight(kits, day, life)) return allAtMidnight(kits, day);
	const ends = endsOf(steps);
	if (kits > mostFollowed(ends)) return oneByOne(kits, steps, renewedOfMany(kits, day, life));
	const areFew = canFollowEveryKit(kits, ends);
	const followed = areFew ? together(steps) : steps;
	const rough = roughly(followed);
	const chain = areFew
		? new EveryKitsEnd(kits, ends)
		: new OldestKits(kits, ends, rough, renewedAtOnce(kits, uses, life.days + 1) / rough.length);
	const days = stretchOf(uses, kits, life, steps);
	settle(chain, rough, days);
	if (rough.length < followed.length) settle(chain, followed, days);
	const { given, perDay } = renewedOverDays(chain, followed, days, kits);
	return { kits, given: given.map((table) => givenInTable(kits, table)), perDay };
}

/** Days on which kits may end. */
function endsOf(steps: readonly RenewalStep[]): number {
	return Math.max(...steps.map((step) => step.target)) + 1;
}

/** With more kits than this, what holds for so many is carried over. */
function mostFollowed(ends: number): number {
	return Math.max(ALWAYS_FOLLOWED, Math.floor(MOST_PLACES / ends));
}

/**
 * Days whose mean says whether it has settled: kits that nobody uses come round together,
 * all of them once a life and what it takes to be ready again, others mix.
 */
function stretchOf(uses: number, kits: number, life: ReadyLife, steps: readonly RenewalStep[]) {
	const { target } = steps[0] as RenewalStep;
	const cycle = Math.max(1, life.renewal === "in_time" ? life.days : target + 1);
	return uses * life.days < kits ? cycle : Math.min(cycle, MOST_DAYS_IF_USED);
}

/**
 * Renewals a day with very many kits: as if each were renewed at once, at the age that
 * gives what is found with fewer kits and as many uses for each.
 *
 * That age hardly changes with the uses: it is found for some uses of a kit, and between them it is
 * in between, within 1 in 50 of what each number by itself would give. So all numbers of
 * kits, and all kinds whose days are alike, share it.
 */
function renewedOfMany(kits: number, day: LikeDay, life: ReadyLife): number {
	const uses = usesOf(day);
	const place = Math.max(LEAST_PLACE, AGES_PER_DOUBLE * Math.log2(uses / kits));
	const low = Math.floor(place);
	const age = (at: number) => ageOfMany(shapeOf(day), life, at);
	return renewedAtOnce(kits, uses, age(low) + (place - low) * (age(low + 1) - age(low)));
}

/** Uses of a kit for which the age is found, so many from one number of uses to twice as many. */
const AGES_PER_DOUBLE = 6;
/** Fewer uses of a kit than at this place are as none. */
const LEAST_PLACE = -20 * AGES_PER_DOUBLE;

/** The day with a use altogether; days that differ by rounding only are the same. */
function shapeOf(day: LikeDay): LikeDay {
	const all = usesOf(day) || 1;
	const part = (uses: number) => Number((uses / all).toPrecision(9));
	return { ...day, uses: day.uses.map(part), usesAfterMidnight: part(day.usesAfterMidnight) };
}

const ageOfMany = memoize(
	(shape: LikeDay, life: ReadyLife, place: number): number => {
		const kits = mostFollowed(endsOf(renewalSteps(shape, life)));
		const all = kits * 2 ** (place / AGES_PER_DOUBLE);
		const fewer = {
			...shape,
			uses: shape.uses.map((uses) => uses * all),
			usesAfterMidnight: shape.usesAfterMidnight * all,
		};
		const wanted = renewalsOfDay(kits, fewer, life).perDay;
		let young = 0.01;
		let old = 4 * (life.days + 2);
		for (let i = 0; i < 50; i++) {
			const age = (young + old) / 2;
			if (renewedAtOnce(kits, usesOf(fewer), age) > wanted) young = age;
			else old = age;
		}
		return young;
	},
	({ starts, uses, usesAfterMidnight, plannedMinutes }, { days, renewal }, place) => [
		starts.length,
		...starts,
		...uses,
		usesAfterMidnight,
		plannedMinutes,
		days,
		renewal,
		place,
	],
);

/** Over a long life kits are spread so far that they are renewed one by one, in time a day and a half earlier. */
function longLife(kits: number, uses: number, { days, renewal }: ReadyLife): number {
	return renewedAtOnce(kits, uses, renewal === "in_time" ? days - 1 : days + 1);
}

/** Whether whatever is ready at midnight has been ready since the day before, and ends. */
function keepOnlyForDay(steps: readonly RenewalStep[], { renewal }: ReadyLife): boolean {
	return renewal === "when_expired" && steps.every(({ target }) => target === 0);
}

/** Whether with so many kits or more all that are ready at midnight go out of date together, every day. */
export function allEndAtMidnight(kits: number, day: LikeDay, life: ReadyLife): boolean {
	const uses = usesOf(day);
	return (
		kits > ALWAYS_FOLLOWED &&
		keepOnlyForDay(renewalSteps(day, life), life) &&
		renewedAtOnce(kits, uses, life.days - 2) >= RARE * uses
	);
}

/** All kits that were not used since the last round began go out of date together. */
function allAtMidnight(kits: number, { uses }: LikeDay): RenewalsOfDay {
	const used = cappedUses(kits, poisson(uses.at(-1) as number));
	const perDay = used.reduce((sum, chance, u) => sum + chance * (kits - u), 0);
	return { kits, given: [(u) => always(kits - u)], perDay };
}

/** Renewals apart from each other and from the uses, all in the day's last step that renews any. */
function oneByOne(kits: number, steps: readonly RenewalStep[], perDay: number): RenewalsOfDay {
	const last = steps.findLast((step) => step.endsBy >= 0);
	const given = steps
		.filter(renews)
		.map((step) => givenApart(kits, poisson(step === last ? perDay : 0)));
	return { kits, given, perDay };
}

function usesOf({ uses, usesAfterMidnight }: LikeDay): number {
	return uses.reduce((sum, mean) => sum + mean, usesAfterMidnight);
}

/** Renewals a day were each kit renewed at once at an age. */
function renewedAtOnce(kits: number, usesPerDay: number, age: number): number {
	const inputs = { kitsInService: kits, usesPerDay, readyLifeDays: Math.max(0.5, age) };
	return Number(expiriesPerDay.compute(inputs));
}
