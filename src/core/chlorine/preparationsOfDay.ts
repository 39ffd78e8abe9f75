import { calculation } from "../calculation.ts";
import type { Counts } from "../counts/counts.ts";
import { poisson } from "../counts/poisson.ts";
import { countOverLevel } from "../rounds/atLevel.ts";
import { kitsOfDay } from "../rounds/kitsOver.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { runningRounds } from "../rounds/roundsThatRun.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { MINUTES_PER_HOUR } from "../values/clock.ts";
import { LONGEST_SOLUTION_HOURS } from "./longestSolutionHours.ts";

interface Inputs {
	readonly rounds: RoundsOfDay;
	readonly made: "each_round" | "each_day";
	readonly lifeHours: number;
}

/**
 * How many times the solution is made on a day.
 *
 * Each round: as often as rounds run. Each day: once on a day with a round, and
 * again for a round that starts after the solution made that day has reached its age.
 */
export const preparationsOfDay = calculation<Inputs, Counts>({
	key: "preparations",
	label: say`Preparations: how likely each number is`,
	unit: say`preparations`,
	formula: say`Rounds that run, where the solution is made for each round; days with a round, where it is made once a day and used no longer than its life.`,
	source: sources.solutionLife,
	inputs: {
		rounds: { label: say`Kits in each round, average`, unit: say`kits` },
		made: { label: say`Solution is made`, unit: "" },
		lifeHours: {
			label: say`A mixed solution may be used for`,
			unit: "h",
			min: 1,
			max: LONGEST_SOLUTION_HOURS,
		},
	},
	example: {
		// Each round runs as likely as not; the second makes new solution, because 7 h after the first it is too old.
		inputs: {
			rounds: {
				kind: "in_rounds",
				starts: [7 * MINUTES_PER_HOUR, 14 * MINUTES_PER_HOUR],
				kits: [Math.LN2, Math.LN2],
				byKind: [[Math.LN2, Math.LN2]],
			},
			made: "each_day",
			lifeHours: 6,
		},
		result: { first: 0, chance: Float64Array.of(0.25, 0.5, 0.25) },
		within: 1e-12,
	},
	compute: ({ rounds, made, lifeHours }) =>
		rounds.kind === "after_each_use" && made === "each_round"
			? kitsOfDay(rounds)
			: countOverLevel(rounds, (known) => preparationsFor(known, made, lifeHours)),
});

function preparationsFor(rounds: RoundsOfDay, made: Inputs["made"], lifeHours: number): Counts {
	if (rounds.kind === "after_each_use") return oneByOne(rounds.kits[0] as number, lifeHours);
	if (made === "each_round") return runningRounds(rounds.kits);
	return onceADay(rounds.starts, rounds.kits, lifeHours * MINUTES_PER_HOUR);
}

interface MadeSoFar {
	/** When the last preparation was made; long ago where it may no longer be used. */
	readonly madeAt: number;
	readonly count: number;
	readonly chance: number;
}

const LONG_AGO = Number.NEGATIVE_INFINITY;

/** Goes through the day's rounds; the state is how many preparations were made, and when the last. */
function onceADay(starts: readonly number[], kits: readonly number[], lifeMinutes: number): Counts {
	let states: readonly MadeSoFar[] = [{ madeAt: LONG_AGO, count: 0, chance: 1 }];
	starts.forEach((start, i) => {
		const runs = -Math.expm1(-(kits[i] as number));
		states = merged(
			states.flatMap(({ madeAt, count, chance }) => {
				if (start - madeAt < lifeMinutes) return [{ madeAt, count, chance }];
				const made = { madeAt: start, count: count + 1, chance: chance * runs };
				return [made, { madeAt: LONG_AGO, count, chance: chance * (1 - runs) }];
			}),
		);
	});
	const chance = new Float64Array(Math.max(...states.map((s) => s.count)) + 1);
	for (const state of states) chance[state.count] = (chance[state.count] as number) + state.chance;
	return { first: 0, chance };
}

/** States alike in all that matters later become one: without this they double with every round. */
function merged(states: readonly MadeSoFar[]): MadeSoFar[] {
	const alike = new Map<string, MadeSoFar>();
	for (const state of states) {
		const key = `${state.madeAt} ${state.count}`;
		alike.set(key, { ...state, chance: state.chance + (alike.get(key)?.chance ?? 0) });
	}
	return [...alike.values()];
}

const HOURS_PER_DAY = 24;

/**
 * Kits one by one: a preparation starts with a kit and serves those that follow
 * within its life. More than n preparations need more than n kits outside the
 * lives of the first n: P(≤ n) = P(Poisson(kits · (1 − n·life/24)) ≤ n).
 */
function oneByOne(kits: number, lifeHours: number): Counts {
	const most = Math.ceil(HOURS_PER_DAY / lifeHours);
	const atMost = Array.from({ length: most + 1 }, (_, n) => {
		const share = 1 - (n * lifeHours) / HOURS_PER_DAY;
		if (share <= 0) return 1;
		const { first, chance } = poisson(kits * share);
		return chance.reduce((sum, p, i) => (first + i <= n ? sum + p : sum), 0);
	});
	return { first: 0, chance: Float64Array.from(atMost, (sum, n) => sum - (atMost[n - 1] ?? 0)) };
}
