import { calculation } from "../calculation.ts";
import { type Counts, once } from "../counts/counts.ts";
import { groupsOf } from "../counts/groupsOf.ts";
import { mixedOver } from "../counts/mixedOver.ts";
import { poisson } from "../counts/poisson.ts";
import { sumOf } from "../counts/sumOf.ts";
import { memoize } from "../memoize.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { countOverLevel, kitsOfRoundAt, nodesOfDay } from "./atLevel.ts";
import { kitsOfDay } from "./kitsOver.ts";
import { oneRound, type RoundsOfDay } from "./roundsOfDay.ts";

/** How many of a day's rounds run (Poisson-binomial), from the mean kits in each. */
export const runningRounds = memoize(
	(kits: readonly number[]) => sumOf(kits.map((m) => once(-Math.expm1(-m)))),
	(kits) => kits,
);

const loadsOfRounds = memoize(
	(kits: readonly number[], kitsInLoad: number) =>
		sumOf(kits.map((m) => groupsOf(poisson(m), kitsInLoad))),
	(kits, kitsInLoad) => [kitsInLoad, ...kits],
);

const roundsInput = { rounds: { label: say`Kits in each round, average`, unit: say`kits` } };

/** How many rounds of a day run: a round runs when at least one kit waits for it. */
export const roundsThatRun = calculation<{ rounds: RoundsOfDay }, Counts>({
	key: "rounds_that_run",
	label: say`Rounds that run: how likely each number is`,
	unit: say`rounds`,
	formula: say`A round with a mean of m kits runs with chance 1 − e^−m; the rounds of the day are added up exactly. After each use, every kit is a round.`,
	source: sources.thinning,
	inputs: roundsInput,
	example: {
		// A mean of ln 2 kits: as likely as not, none.
		inputs: { rounds: oneRound(Math.LN2) },
		result: { first: 0, chance: Float64Array.of(0.5, 0.5) },
		within: 1e-12,
	},
	compute: ({ rounds }) =>
		rounds.kind === "in_rounds"
			? countOverLevel(rounds, ({ kits }) => runningRounds(kits))
			: kitsOfDay(rounds),
});

/** How many loads the rounds of a day make. */
export const loadsOfDay = calculation<{ rounds: RoundsOfDay; kitsInLoad: number }, Counts>({
	key: "loads",
	label: say`Loads: how likely each number is`,
	unit: say`loads`,
	formula: say`The kits of a round divided by the kits in one soak, rounded up; added up over the rounds of the day exactly. After each use, every kit is a load.`,
	source: sources.thinning,
	inputs: { ...roundsInput, kitsInLoad: { label: say`Kits in one soak`, unit: say`kits`, min: 1 } },
	example: {
		// Poisson with mean ln 2: none 0.5, 1 or 2 kits 0.34657 + 0.12011, 3 or 4 kits 0.02775 + 0.00481, …
		inputs: { rounds: oneRound(Math.LN2), kitsInLoad: 2 },
		result: { first: 0, chance: Float64Array.of(0.5, 0.466687, 0.032561, 0.000744, 0.000008) },
		within: 1e-6,
	},
	compute: ({ rounds, kitsInLoad }) =>
		rounds.kind === "in_rounds"
			? countOverLevel(rounds, ({ kits }) => loadsOfRounds(kits, kitsInLoad))
			: kitsOfDay(rounds),
});

/** How many kits come into one round of a day; the others are left alone. */
export const kitsOfRound = memoize((rounds: RoundsOfDay, round: number) =>
	mixedOver(nodesOfDay(rounds), (factor) => poisson(kitsOfRoundAt(rounds, round, factor))),
);
