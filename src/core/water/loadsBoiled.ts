import { calculation } from "../calculation.ts";
import { always, type Counts } from "../counts/counts.ts";
import { levelNodes } from "../counts/levelNodes.ts";
import { mixedOver } from "../counts/mixedOver.ts";
import { chanceAtLeast, poisson } from "../counts/poisson.ts";
import { confidenceInput } from "../counts/setAsideOf.ts";
import { setAsideOfSome } from "../counts/setAsideOfSome.ts";
import { spanShape } from "../counts/spanShape.ts";
import { expiriesPerDay } from "../kits/expiriesPerDay.ts";
import { memoize } from "../memoize.ts";
import { ofEach } from "../ofEach.ts";
import { onceAsked } from "../onceAsked.ts";
import { type Refusal, refuse } from "../refusal.ts";
import { atLevel, countOverLevel, kitsAtLevel } from "../rounds/atLevel.ts";
import { oneRound, type RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { kitsOfRound } from "../rounds/roundsThatRun.ts";
import { say } from "../say.ts";
import { commonPractice } from "../source.ts";
import { sources } from "../sources.ts";
import { MINUTES_PER_DAY } from "../values/clock.ts";
import type { RoundToBoilFor } from "./lotsOfWater.ts";
import { StandingWater } from "./standingWater.ts";

/** Loads of water that are boiled, on each day and on all of them together. */
export interface LoadsBoiled {
	readonly byDay: readonly Counts[];
	readonly total: Counts;
}

interface Prepared {
	readonly days: readonly RoundsOfDay[];
	readonly confidence: number;
	readonly kitsInService: number;
	readonly kitsInLoad: number;
}

const inputs = {
	days: { label: say`Kits in each round, average`, unit: say`kits` },
	confidence: confidenceInput,
	kitsInService: { label: say`Kits in service`, unit: say`kits`, min: 0 },
	kitsInLoad: { label: say`Kits in one soak`, unit: say`kits`, min: 1 },
};

/** Loads that each round of a day is prepared for: for the kits set aside for it, at least one kit. */
function loadsPrepared(
	day: RoundsOfDay,
	{ confidence, kitsInService, kitsInLoad }: Omit<Prepared, "days">,
) {
	return day.kits.map((_, i) => {
		const kits = Math.min(setAsideOfSome(kitsOfRound(day, i), confidence), kitsInService);
		return Math.ceil(Math.max(1, kits) / kitsInLoad);
	});
}

/** Boiled for every round whether or not it runs: there is no chance in it. */
export const loadsForEveryRound = calculation<Prepared, LoadsBoiled>({
	key: "loads_for_every_round",
	label: say`Loads of water boiled: how likely each number is`,
	unit: say`loads`,
	formula: say`For each round the loads it is prepared for, whether or not it runs.`,
	source: commonPractice,
	inputs,
	example: {
		// A mean of 3 kits sets 6 aside: two loads of three.
		inputs: { days: [oneRound(3)], confidence: 0.95, kitsInService: 10, kitsInLoad: 3 },
		result: { byDay: [always(2)], total: always(2) },
		within: 0,
	},
	compute: ({ days, ...prepared }) => {
		const byDay = ofEach(days, (day) =>
			loadsPrepared(day, prepared).reduce((sum, loads) => sum + loads, 0),
		);
		return {
			byDay: byDay.map(always),
			total: always(byDay.reduce((sum, loads) => sum + loads, 0)),
		};
	},
});

interface Standing extends Prepared {
	/** From lighting the fire to cool water. */
	readonly waterMinutes: number;
	/** From the boil to too old, and from the boil to cool. */
	readonly keepsMinutes: number;
	readonly coolMinutes: number;
}

/** Plans and weeks known at once, each with all that may stand ready. */
const MOST_STANDING = 4;
/** Days like the first that are gone through before it, until what stands ready has settled. */
const DAYS_BEFORE = 12;

/** Boiled so that cooled water stands ready for the next round, or for the next kit after each use. */
export const loadsStanding = calculation<Standing, LoadsBoiled>({
	key: "loads_standing",
	label: say`Loads of water boiled: how likely each number is`,
	unit: say`loads`,
	formula: say`In rounds: a fire is lit for a round unless enough water still in date stands ready, one lot more than rounds until then; a round that runs uses the oldest lot in date. The lots that stand ready are gone through round by round. After each use: a load for each kit, and loads not used in time, by the rule for kits that go out of date; as many stand ready as kits may come while one load is heated and cools.`,
	source: sources.perishable,
	inputs: {
		...inputs,
		waterMinutes: { label: say`From lighting the fire to cool water`, unit: "min", min: 0 },
		keepsMinutes: { label: say`Boiled water may be used for`, unit: "min", min: 0 },
		coolMinutes: { label: say`Cooling`, unit: "min", min: 0 },
	},
	example: {
		// One round a day, as likely as not without a kit; water is used the same day or boiled anew.
		inputs: {
			days: [oneRound(Math.LN2), oneRound(Math.LN2)],
			confidence: 0.5,
			kitsInService: 1,
			kitsInLoad: 1,
			waterMinutes: 300,
			keepsMinutes: 2000,
			coolMinutes: 400,
		},
		result: {
			byDay: [
				{ first: 0, chance: Float64Array.of(1 / 3, 2 / 3) },
				{ first: 0, chance: Float64Array.of(1 / 3, 2 / 3) },
			],
			total: { first: 0, chance: Float64Array.of(0, 2 / 3, 1 / 3) },
		},
		within: 1e-3,
	},
	compute: (of) => {
		const [first] = of.days;
		if (!first) return { byDay: [], total: always(0) };
		return first.kind === "in_rounds" ? standingForRounds(of) : standingForKits(of);
	},
});

function standingForRounds({
	days,
	waterMinutes,
	keepsMinutes,
	coolMinutes,
	...prepared
}: Standing): LoadsBoiled {
	const first = days[0] as RoundsOfDay;
	const all = [...Array.from({ length: DAYS_BEFORE }, () => first), ...days];
	const loads = ofEach(all, (day) => loadsPrepared(day, prepared));
	const rounds = all.flatMap((day, d): RoundToBoilFor[] =>
		startsOf(day).map((start, i) => ({
			at: (d - DAYS_BEFORE) * MINUTES_PER_DAY + start,
			loads: loads[d]?.[i] as number,
			day: d - DAYS_BEFORE,
		})),
	);
	const water = standingWater(rounds, waterMinutes, keepsMinutes - coolMinutes);
	const nodes = nodesOf(days);
	const runs = new Map(
		nodes.map(({ factor }) => [
			factor,
			all.flatMap((day) => {
				const { kits } = atLevel(day, factor);
				return startsOf(day).map((_, i) => -Math.expm1(-(kits[i] as number)));
			}),
		]),
	);
	const runsAt = (factor: number) => runs.get(factor) as readonly number[];
	// A day asks for its own, a week for all of its days: going through a long plan for both is twice the work.
	const byDay = onceAsked(() => {
		const known = new Map(nodes.map(({ factor }) => [factor, water.byDay(runsAt(factor))]));
		return days.map((_, d) =>
			mixedOver(nodes, (factor) => (known.get(factor) as Counts[])[d] as Counts),
		);
	});
	const total = onceAsked(() => mixedOver(nodes, (factor) => water.total(runsAt(factor))));
	return {
		get byDay() {
			return byDay();
		},
		get total() {
			return total();
		},
	};
}

/** Weeks whose rounds begin and are prepared alike may have the same water standing ready. */
const standingWater = memoize(
	(rounds: readonly RoundToBoilFor[], waterMinutes: number, lastsMinutes: number) =>
		new StandingWater(rounds, waterMinutes, lastsMinutes),
	(rounds, waterMinutes, lastsMinutes) => [
		waterMinutes,
		lastsMinutes,
		...rounds.flatMap(({ at, loads, day }) => [at, loads, day]),
	],
	MOST_STANDING,
);

const startsOf = (day: RoundsOfDay) => (day as Extract<RoundsOfDay, { kind: "in_rounds" }>).starts;

/** The level that all days of the plan share. */
function nodesOf(days: readonly RoundsOfDay[]) {
	const levels = days.flatMap(({ forecast }) => (forecast ? [forecast.level] : []));
	const mean = days.reduce((sum, day) => sum + kitsAtLevel(day), 0);
	return levelNodes(spanShape(levels), mean);
}

function standingForKits({ days, confidence, ...water }: Standing): LoadsBoiled | Refusal {
	const readyLifeDays = (water.keepsMinutes - water.coolMinutes) / MINUTES_PER_DAY;
	if (readyLifeDays <= 0)
		return refuse({
			code: "cooling-too-long",
			received: say`${Math.ceil(water.coolMinutes)} min`,
			allowed: say`less than ${Math.floor(water.keepsMinutes)} min`,
			message: say`Boiled water is too old before it is cool, so none can stand ready.`,
			place: { file: "unit.csv", line: null, column: "boiled_water_hours" },
		});
	const kitsOf = ({ kits }: RoundsOfDay) => kits[0] as number;
	const busiest = Math.max(...days.map(kitsOf));
	const meanWhileBoiling = (busiest * water.waterMinutes) / MINUTES_PER_DAY;
	let kitsInService = 1;
	while (chanceAtLeast(kitsInService, meanWhileBoiling) > 1 - confidence) kitsInService++;
	const boiled = (day: RoundsOfDay) => {
		const usesPerDay = kitsOf(day);
		const tooOld = expiriesPerDay.compute({ kitsInService, usesPerDay, readyLifeDays });
		return usesPerDay + (tooOld as number);
	};
	return {
		byDay: days.map((day) => countOverLevel(day, (known) => poisson(boiled(known)))),
		total: mixedOver(nodesOf(days), (factor) =>
			poisson(days.reduce((sum, day) => sum + boiled(atLevel(day, factor)), 0)),
		),
	};
}
