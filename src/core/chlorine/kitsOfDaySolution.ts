import { calculation } from "../calculation.ts";
import { setAside } from "../counts/counts.ts";
import { poisson } from "../counts/poisson.ts";
import { confidenceInput } from "../counts/setAsideOf.ts";
import { setAsideOfSome } from "../counts/setAsideOfSome.ts";
import { countOverLevel } from "../rounds/atLevel.ts";
import { kitsOfDay } from "../rounds/kitsOver.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { sumOfAll } from "../sumOfAll.ts";
import { MINUTES_PER_DAY, MINUTES_PER_HOUR } from "../values/clock.ts";
import { LONGEST_SOLUTION_HOURS } from "./longestSolutionHours.ts";
import { solutionKeeps } from "./solutionKeeps.ts";

interface Inputs {
	readonly days: readonly RoundsOfDay[];
	readonly lifeHours: number;
	readonly confidence: number;
	readonly kitsInService: number;
}

/**
 * Kits that one solution serves where it is made once a day: nobody pours it away after a
 * round, and its label names only the hour at which it is too old.
 */
export const kitsOfDaySolution = calculation<Inputs, number>({
	key: "kits_of_day_solution",
	label: say`Kits through a solution made once a day, prepare for`,
	unit: say`kits`,
	formula: say`Of all rounds that one solution serves before it is too old, those that bring most kits on average together: the smallest number that is enough, as surely as the plan asks, when it is made; at most the kits in service in each round. Kit by kit: the first and those that come while it may be used, spread evenly over the day, at most all kits of the day.`,
	source: sources.solutionLife,
	inputs: {
		days: { label: say`Kits in each round, average`, unit: say`kits` },
		lifeHours: {
			label: say`A mixed solution may be used for`,
			unit: "h",
			min: 1,
			max: LONGEST_SOLUTION_HOURS,
		},
		confidence: confidenceInput,
		kitsInService: { label: say`Kits in service`, unit: say`kits`, min: 0 },
	},
	example: {
		// The first two rounds and the last two are in reach of each other; a mean of 3 + 2 kits sets 9 aside.
		inputs: {
			days: [{ kind: "in_rounds", starts: [420, 840, 1260], kits: [3, 2, 2], byKind: [[3, 2, 2]] }],
			lifeHours: 8,
			confidence: 0.95,
			kitsInService: 10,
		},
		result: 9,
		within: 0,
	},
	compute: ({ days, ...use }) => Math.max(1, ...[...new Set(days)].map((day) => kitsOn(day, use))),
});

function kitsOn(day: RoundsOfDay, use: Omit<Inputs, "days">): number {
	return day.kind === "in_rounds" ? inRounds(day, use) : oneByOne(day, use);
}

type InRounds = RoundsOfDay & { readonly kind: "in_rounds" };

function inRounds(day: InRounds, { lifeHours, confidence, kitsInService }: Omit<Inputs, "days">) {
	const { from, to } = fullestSpan(day, lifeHours);
	const kits = countOverLevel(day, (known) => poisson(sumOfAll(known.kits.slice(from, to))));
	return Math.min(setAsideOfSome(kits, confidence), kitsInService * (to - from));
}

/** Of the rounds that solution made for one of them serves, those with most kits together: from one round to before another. */
function fullestSpan({ starts, kits }: InRounds, lifeHours: number) {
	let fullest = { from: 0, to: 1, mean: 0 };
	starts.forEach((start, from) => {
		const tooOld = starts.findIndex((later) => !solutionKeeps(later - start, lifeHours));
		const to = tooOld < 0 ? starts.length : tooOld;
		const mean = sumOfAll(kits.slice(from, to));
		if (mean > fullest.mean) fullest = { from, to, mean };
	});
	return fullest;
}

function oneByOne(day: RoundsOfDay, { lifeHours, confidence }: Omit<Inputs, "days">): number {
	const whole = setAsideOfSome(kitsOfDay(day), confidence);
	const share = (lifeHours * MINUTES_PER_HOUR) / MINUTES_PER_DAY;
	if (share >= 1) return whole;
	const later = countOverLevel(day, ({ kits }) => poisson((kits[0] as number) * share));
	return Math.min(whole, 1 + setAside(later, confidence));
}
