import { canFollowEveryKit, EveryKitsEnd } from "./everyKitsEnd.ts";
import { expiriesPerDay } from "./expiriesPerDay.ts";
import { OldestKits } from "./oldestKits.ts";
import { type LikeDay, type ReadyLife, type RenewalStep, renewalSteps } from "./renewalSteps.ts";

/**
 * Kits renewed, by the kits used before: row u of each `given`, of kits + 1 numbers, holds
 * the chance of 0, 1, … renewals where u kits were used since the start of the round before
 * (when_expired: from the day's last round to midnight).
 */
export interface RenewalsOfDay {
	readonly kits: number;
	/** in_time: for each round of the day; when_expired: once, for midnight. */
	readonly given: readonly Float64Array[];
	/** Mean renewals of a day. */
	readonly perDay: number;
}

/** Lumps of kits come round again after their life, so what is settled is the mean over it. */
const LONGEST_STRETCH = 8;
const MOST_STRETCHES = 60;
const SETTLED = 1e-3;

/**
 * How many kits are renewed, unused, on a day like all others.
 *
 * Gone through step by step, day after day, until it settles. With few kits every kit's
 * last day is followed, which is exact; with more, that of the oldest.
 */
export function renewalsOfDay(kits: number, day: LikeDay, life: ReadyLife): RenewalsOfDay {
	const steps = renewalSteps(day, life);
	const ends = Math.max(...steps.map((step) => step.target)) + 1;
	const chain = canFollowEveryKit(kits, ends)
		? new EveryKitsEnd(kits, ends)
		: new OldestKits(kits, ends, steps, atOnce(kits, day, life) / steps.length);
	const stretch = Math.min(life.days + 1, LONGEST_STRETCH);
	let made = { given: noneGiven(steps, kits), perDay: Number.NaN, squares: Number.NaN };
	for (let i = 0; i < MOST_STRETCHES; i++) {
		const { squares } = made;
		made = goThrough(stretch, chain, steps, kits);
		if (Math.abs(made.squares - squares) <= SETTLED * made.squares) break;
	}
	const { given, perDay } = made;
	return { kits, given: life.renewal === "in_time" ? given : given.slice(0, 1), perDay };
}

type Chain = Pick<EveryKitsEnd | OldestKits, "go">;

/** Means over some days. */
function goThrough(days: number, chain: Chain, steps: readonly RenewalStep[], kits: number) {
	const given = noneGiven(steps, kits);
	const today = new Float64Array((kits + 1) ** 2);
	let perDay = 0;
	let squares = 0;
	for (let day = 0; day < days; day++)
		steps.forEach((step, s) => {
			const uses = chain.go(step, today);
			perDay += meanRenewed(today, uses, 1) / days;
			squares += meanRenewed(today, uses, 2) / days;
			const all = given[s] as Float64Array;
			for (let i = 0; i < all.length; i++)
				all[i] = (all[i] as number) + (today[i] as number) / days;
		});
	return { given, perDay, squares };
}

function noneGiven(steps: readonly RenewalStep[], kits: number): Float64Array[] {
	return steps.map(() => new Float64Array((kits + 1) ** 2));
}

/** Mean of the renewals to a power, from how likely each number of uses is. */
export function meanRenewed(given: Float64Array, uses: Float64Array, power = 1): number {
	let sum = 0;
	uses.forEach((chance, u) => {
		for (let x = 1; x < uses.length; x++)
			sum += chance * x ** power * (given[u * uses.length + x] as number);
	});
	return sum;
}

/** Renewals a day were each kit renewed at once: a figure to begin with. */
function atOnce(kits: number, { uses, usesAfterMidnight }: LikeDay, { days }: ReadyLife): number {
	const usesPerDay = uses.reduce((sum, mean) => sum + mean, usesAfterMidnight);
	const inputs = { kitsInService: kits, usesPerDay, readyLifeDays: days + 1 };
	return Number(expiriesPerDay.compute(inputs));
}
