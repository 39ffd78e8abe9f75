import { calculation } from "../calculation.ts";
import type { LevelOfDay } from "../counts/counts.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";
import { sources } from "../sources.ts";
import { sumOfAll } from "../sumOfAll.ts";
import { MINUTES_PER_DAY, MINUTES_PER_HOUR } from "../values/clock.ts";
import { DayClock, flatDay, type HourShares } from "./dayClock.ts";

/** Mean number of kits in each round of a day, or of the whole day after each use. */
export type RoundsOfDay = {
	/** All kits of a round together; a single number after each use. */
	readonly kits: readonly number[];
	/** The same for each kind of kit apart: byKind[kind][round]. */
	readonly byKind: readonly (readonly number[])[];
	/** Where the births are forecast: what is not known of them, and the kits that do not go with it. */
	readonly forecast?: {
		readonly level: LevelOfDay;
		/** Kits gone out of date, and those of days with a figure of their own: sure[kind][round]. */
		readonly sure: readonly (readonly number[])[];
	};
} & (
	| { readonly kind: "in_rounds"; readonly starts: readonly number[] }
	| { readonly kind: "after_each_use" }
);

interface ArrivalInputs {
	readonly starts: readonly number[];
	readonly hourShares: HourShares;
	readonly usesYesterday: number;
	readonly usesToday: number;
	readonly expiriesYesterday: number;
	readonly expiriesToday: number;
}

/** When rounds start, and how births are spread over the hours. */
export const startsAndHours = {
	starts: { label: say`Rounds start at`, unit: say`minutes after midnight` },
	hourShares: { label: say`Births through the day`, unit: say`share of each hour` },
} as const;

/** Kits that join a round though nobody used them. */
export const goneOutOfDate = {
	expiriesYesterday: {
		label: say`Kits gone out of date the day before, average`,
		unit: say`kits/day`,
		min: 0,
	},
	expiriesToday: { label: say`Kits gone out of date, average`, unit: say`kits/day`, min: 0 },
} as const;

/**
 * Mean number of kits in each round of a day: what came in since the round before.
 *
 * The first round of the day takes what came in since the last round of the day before.
 */
export const kitsInRounds = calculation<ArrivalInputs, RoundsOfDay>({
	key: "kits_in_rounds",
	label: say`Kits in each round, average`,
	unit: say`kits`,
	formula: say`Kits used since the start of the round before, by the share of births in those hours, and kits gone out of date, spread evenly over the day.`,
	source: sources.thinning,
	inputs: {
		...startsAndHours,
		usesYesterday: { label: say`Kits used the day before, average`, unit: say`kits/day`, min: 0 },
		usesToday: { label: say`Kits used, average`, unit: say`kits/day`, min: 0 },
		...goneOutOfDate,
	},
	example: {
		// One use and 0.1 kits out of date an hour; the rounds are 10, 7 and 7 hours after those before.
		inputs: {
			starts: [7 * 60, 14 * 60, 21 * 60],
			hourShares: flatDay,
			usesYesterday: 24,
			usesToday: 24,
			expiriesYesterday: 2.4,
			expiriesToday: 2.4,
		},
		result: {
			kind: "in_rounds",
			starts: [7 * 60, 14 * 60, 21 * 60],
			kits: [11, 7.7, 7.7],
			byKind: [[11, 7.7, 7.7]],
		},
		within: 1e-9,
	},
	compute: ({ starts, hourShares, usesYesterday, usesToday, expiriesYesterday, expiriesToday }) => {
		const uses = new DayClock([usesYesterday, usesToday], hourShares);
		const expiries = new DayClock([expiriesYesterday, expiriesToday], flatDay);
		const lastYesterday = starts.at(-1) as number;
		const kits = starts.map((start, i) => {
			const from = i === 0 ? lastYesterday : MINUTES_PER_DAY + (starts[i - 1] as number);
			const to = MINUTES_PER_DAY + start;
			return uses.between(from, to) + expiries.between(from, to);
		});
		return { kind: "in_rounds", starts, kits, byKind: [kits] };
	},
});

/** After each use: every kit of the day is a round of its own. */
export const kitsAfterEachUse = calculation<{ kits: number }, RoundsOfDay>({
	key: "kits_after_each_use",
	label: say`Kits reprocessed one by one, average`,
	unit: say`kits/day`,
	formula: say`All kits to reprocess that day; each is a round of its own.`,
	source: sources.thinning,
	inputs: { kits: { label: say`Kits to reprocess, average`, unit: say`kits/day`, min: 0 } },
	example: {
		inputs: { kits: 0.7 },
		result: { kind: "after_each_use", kits: [0.7], byKind: [[0.7]] },
		within: 0,
	},
	compute: ({ kits }) => ({ kind: "after_each_use", kits: [kits], byKind: [[kits]] }),
});

/** A day with one round, at 7, and the mean number of kits in it: for examples. */
export function oneRound(kits: number): RoundsOfDay {
	return { kind: "in_rounds", starts: [7 * MINUTES_PER_HOUR], kits: [kits], byKind: [[kits]] };
}

/** The rounds of a day with the kits of all kinds in them. */
export const roundsTogether = calculation<{ kinds: readonly RoundsOfDay[] }, RoundsOfDay>({
	key: "rounds_together",
	label: say`Kits in each round, average`,
	unit: say`kits`,
	formula: say`The kits of all kinds in a round added up.`,
	source: definition,
	inputs: { kinds: { label: say`Kits in each round, by kind`, unit: say`kits` } },
	example: {
		inputs: { kinds: [oneRound(1.5), oneRound(0.5)] },
		result: { kind: "in_rounds", starts: [7 * 60], kits: [2], byKind: [[1.5], [0.5]] },
		within: 0,
	},
	compute: ({ kinds }) => {
		const first = kinds[0] as RoundsOfDay;
		const kits = first.kits.map((_, i) => sumOfAll(kinds.map((kind) => kind.kits[i] as number)));
		return { ...first, kits, byKind: kinds.flatMap((kind) => kind.byKind) };
	},
});

interface ForecastInputs {
	readonly rounds: RoundsOfDay;
	readonly sure: RoundsOfDay;
	readonly level: LevelOfDay;
}

/** The rounds of a day whose births are forecast: which of the kits go with the level of births. */
export const roundsOfForecast = calculation<ForecastInputs, RoundsOfDay>({
	key: "rounds_of_forecast",
	label: say`Kits in each round, average`,
	unit: say`kits`,
	formula: say`The kits of each round, apart by what goes with the forecast's level and what does not: kits gone out of date, and those of days with a figure of their own.`,
	source: sources.discounted,
	inputs: {
		rounds: { label: say`Kits in each round, average`, unit: say`kits` },
		sure: { label: say`Of them, not by the forecast`, unit: say`kits` },
		level: { label: say`Births of the day, forecast`, unit: say`births` },
	},
	example: {
		inputs: {
			rounds: oneRound(2),
			sure: oneRound(0.5),
			level: { mean: 6, levelShape: 30, daySpread: 0 },
		},
		result: {
			...oneRound(2),
			forecast: { level: { mean: 6, levelShape: 30, daySpread: 0 }, sure: [[0.5]] },
		},
		within: 0,
	},
	compute: ({ rounds, sure, level }) => ({ ...rounds, forecast: { level, sure: sure.byKind } }),
});
