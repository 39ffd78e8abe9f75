import { type Counts, setAside } from "../counts/counts.ts";
import { memoize } from "../memoize.ts";
import type { UseInputs } from "./useInputs.ts";

/** Amounts counted in steps. */
export interface Steps {
	readonly size: number;
	/** An amount in steps. */
	readonly of: (amount: number) => number;
	/** Steps set aside beyond the count's quantile, to stay on the safe side. */
	readonly more: number;
	/** More steps than this are not followed: what is set aside is less, or they are widened. */
	readonly most: number;
}

/** Quantities are typed with at most this fine a fraction. */
const FINEST = 1e-6;
/** Rounding error of an amount that is worked out, in parts of it. */
const ROUNDING_ERROR = 1e-12;
/** More possible amounts than this are not told apart one by one. */
export const MOST_AMOUNTS = 50_000;
/** Over more days than this a little too much each day would add up. */
const FEW_DAYS = 7;
const LONG = FEW_DAYS + 1;
/** The same where sums are multiplied out. */
const MOST_MULTIPLIED = 5_000;
/** In more rounds than this so many amounts are not followed, however few the days. */
const FEW_ROUNDS = 30;
/** In more rounds than this descalings are followed in steps that are multiplied out. */
export const MOST_DESCALING = 100;
/** So are those of fewer rounds, where these times the possible amounts are more than this. */
export const MOST_DESCALED = 1_500_000;
/** Steps that only tell within how much to look. */
const ROUGHLY = 1_000;
/** What is looked at beyond an amount that is more than enough, in parts of it. */
const LOOKED_AT = 1.5;
/** So many steps are looked at first: births that may be far more than their average make many more possible. */
const FIRST_LOOK = { rough: 3 * ROUGHLY, exact: 2 * MOST_AMOUNTS };
/** Where these are not enough, so many times as many, in the end all. */
const WIDER = 4;
const ALL = Number.POSITIVE_INFINITY;
/** Added where amounts are shared between steps: part of each is counted at the step below it. */
const STEPS_MORE = 5;

/**
 * The largest step of which every rate is a multiple, so that use can be counted in whole steps.
 *
 * Where that would make more amounts than can be told apart, a coarser step. Over a week
 * of 30 rounds at most, rates are rounded up to it, by less than 1 in 1,000 of the use. Over
 * more days that would add up, more rounds would be long to follow in so many, and where kits
 * differ sums are multiplied out, so an amount between two steps is shared between them, which
 * moves no mean. These steps are of the most that is
 * possible: `countedFinely` makes them fine beside what is set aside.
 *
 * @example rates of 2 and 3 pieces have the step 1; 0.5 L alone has the step 0.5
 */
export function commonStep(use: Pick<UseInputs, "rates" | "days">): Steps {
	const amounts = Object.values(use.rates).flat();
	const { perKit, perLoad, perDescale } = use.rates;
	const rounds = use.days.reduce((sum, { kits }) => sum + kits.length, 0);
	// What goes by kits that differ cannot be followed by their number: steps are multiplied out.
	const differ = perLoad.length > 1 || perKit.some((each) => each !== perKit[0]);
	const most = mostUse(use);
	return differ || (perDescale > 0 && isLong(rounds, amounts, most))
		? sharedSteps(amounts, most)
		: countingSteps(amounts, most, rounds > FEW_ROUNDS ? LONG : use.days.length);
}

/** Whether descalings in so many rounds would be long to follow in every possible amount. */
function isLong(rounds: number, amounts: readonly number[], most: number): boolean {
	if (rounds > MOST_DESCALING) return true;
	if (rounds * MOST_AMOUNTS <= MOST_DESCALED) return false;
	return rounds * Math.min(most / exactSteps(amounts).size, MOST_AMOUNTS) > MOST_DESCALED;
}

/** Steps for amounts of which hardly ever more than `most` is used over some days. */
export const countingSteps = memoize(foundSteps, (amounts, most, days) => [
	Math.min(days, LONG),
	most,
	...amounts,
]);

/** Steps where sums of many amounts are multiplied out. */
const sharedSteps = memoize(
	(amounts: readonly number[], most: number) => {
		const exact = exactSteps(amounts);
		return most / exact.size <= MOST_MULTIPLIED ? exact : roughly(most);
	},
	(amounts, most) => [most, ...amounts],
);

function foundSteps(amounts: readonly number[], most: number, days: number): Steps {
	const exact = exactSteps(amounts);
	if (most / exact.size <= MOST_AMOUNTS) return { ...exact, most: FIRST_LOOK.exact };
	if (days > FEW_DAYS) return roughly(most);
	const size = most / MOST_AMOUNTS;
	const of = (amount: number) => Math.ceil(stepsIn(size)(amount));
	return { size, of, more: 0, most: FIRST_LOOK.exact };
}

/** Steps of which every amount is a whole number, however many that makes. */
function exactSteps(amounts: readonly number[]): Steps {
	const used = amounts.filter((amount) => amount > 0);
	if (used.length === 0) return { size: 1, of: Math.ceil, more: 0, most: ALL };
	const finest = used.map((amount) => Math.round(amount / FINEST)).reduce(greatestCommonDivisor);
	const size = Math.max(1, finest) * FINEST;
	return { size, of: stepsIn(size), more: 0, most: ALL };
}

/** Steps for amounts that are not listed, so that what is no whole number of them stays what it is. */
export function unroundedSteps(amounts: readonly number[]): Pick<Steps, "size" | "of"> {
	const { size } = exactSteps(amounts);
	return { size, of: stepsIn(size, ROUNDING_ERROR) };
}

function roughly(most: number): Steps {
	return { ...shared(most / ROUGHLY), most: FIRST_LOOK.rough };
}

function shared(size: number): Steps {
	return { size, of: stepsIn(size), more: STEPS_MORE, most: ALL };
}

/**
 * Steps for what is set aside where an amount is known that is enough: exact where these are not too many.
 *
 * @param count steps of that amount, where they are shared
 */
export function finerSteps(amounts: readonly number[], enough: number, count: number): Steps {
	const exact = exactSteps(amounts);
	const steps = enough / exact.size <= MOST_MULTIPLIED ? exact : shared(enough / count);
	return { ...steps, most: Math.ceil((LOOKED_AT * enough) / steps.size) };
}

/** The same steps, of which more are followed. */
export function widened(steps: Steps): Steps {
	const most = WIDER * steps.most;
	return { ...steps, most: most > FIRST_LOOK.exact ? ALL : most };
}

function stepsIn(size: number, within = FINEST) {
	return (amount: number) => {
		const whole = Math.round(amount / size);
		return Math.abs(amount / size - whole) < within * Math.max(1, whole) ? whole : amount / size;
	};
}

/** What to set aside of an amount counted in steps. */
export function amountSetAside(used: Counts, confidence: number, steps: Steps): number {
	return (setAside(used, confidence) + steps.more) * steps.size;
}

/** An amount that use over the days hardly ever reaches: no round runs without a kit. */
function mostUse({ rates, days }: Pick<UseInputs, "rates" | "days">): number {
	let [mean, allRounds] = [0, 0];
	for (const day of days) {
		mean += day.kits.reduce((s, m) => s + m, 0);
		allRounds += day.kits.length;
	}
	const kits = mean + 8 * Math.sqrt(mean) + 8;
	const rounds = days[0]?.kind === "after_each_use" ? kits : allRounds;
	const eachRound = Math.min(kits, rounds) * (rates.perRound + rates.perDescale);
	const eachKit = rates.perLoad.reduce((sum, use) => sum + use, 0) + Math.max(...rates.perKit);
	return rates.perDay * days.length + eachRound + kits * eachKit;
}

function greatestCommonDivisor(a: number, b: number): number {
	return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
