import { calculation, derive, type Figure } from "../../calculation.ts";
import { always, type Counts, mean, once } from "../../counts/counts.ts";
import { memoize } from "../../memoize.ts";
import { valueIn } from "../../outcome.ts";
import { soaks } from "../../rounds/loads.ts";
import { oneRound, type RoundsOfDay } from "../../rounds/roundsOfDay.ts";
import { say } from "../../say.ts";
import { sources } from "../../sources.ts";
import type { UseInputs } from "../../stock/useInputs.ts";
import { useExpected } from "../../stock/useSetAside.ts";
import { addDays, type IsoDate } from "../../values/date.ts";
import { byDate, roundsByDate } from "../byDate.ts";
import type { DayDemand } from "../dayDemand.ts";
import { dayDemands } from "../dayDemands.ts";
import { preparationsOn } from "../rounds/loadsOn.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { longestWaitDays } from "./longestWait.ts";

/** Days that the store looks ahead, from the first day of the plan on. */
export interface Horizon {
	readonly firstDay: IsoDate;
	readonly days: readonly HorizonDay[];
	/** Rounds of the first days, as many as asked for. */
	readonly rounds: (days: number) => Figure<RoundsOfDay[]>;
}

export interface HorizonDay extends DayDemand {
	readonly preparationCounts: Figure<Counts>;
}

/** As far as the setting says, and as far as the slowest order needs: as far as that alone where one of them cannot be read (`inSight`). Days beyond the plan go by births a day. */
export function horizon(unit: UnitFigures, firstDay: IsoDate): Horizon {
	const { settings, tables } = unit.read;
	const review = valueIn(settings.review_days) ?? 0;
	const slowest =
		Math.max(0, ...tables.items.rows.map(({ value }) => longestWaitDays(value))) + review;
	const ahead = Math.max(valueIn(settings.stock_horizon_days) ?? 0, Math.ceil(slowest), 1);
	const dates = Array.from({ length: ahead }, (_, day) => addDays(firstDay, day));
	const days = dayDemands(unit, dates).map((day) => ({
		...day,
		// Asked for of the product in use alone.
		get preparationCounts() {
			return preparationsOn(unit, day.rounds);
		},
	}));
	// What items have in common is found by the list of days: the same object for all of them.
	const rounds = memoize((count: number) => roundsByDate(days.slice(0, count)));
	return { firstDay, days, rounds };
}

/**
 * A day found within the horizon. Where nobody can read how far ahead stock is looked at, only
 * the days that orders need are gone through: what is not found on them is not known.
 */
export function inSight({ read }: UnitFigures, day: Figure<string>): Figure<string> {
	const lookedAhead = read.settings.stock_horizon_days;
	const isKnown = lookedAhead.outcome.ok || valueIn(day) !== "";
	return isKnown ? day : (lookedAhead as Figure<never>);
}

/** Mean use of an item on each day. */
export const dailyUse = calculation<UseInputs, number[]>({
	key: "daily_use",
	label: say`Use of each day, average`,
	unit: say`in the item's measure`,
	formula: useExpected.formula,
	source: sources.thinning,
	inputs: useExpected.inputs,
	example: {
		// 1 a day + 2 for each of 0.5 kits, then of 1.5.
		inputs: {
			rates: { perDay: 1, perRound: 0, perLoad: [0], perKit: [2], perDescale: 0 },
			days: [oneRound(0.5), oneRound(1.5)],
			loads: soaks(3),
			descaleEvery: 0,
		},
		result: [2, 4],
		within: 1e-12,
	},
	compute: ({ days, ...use }) =>
		days.map((day) => useExpected.compute({ ...use, days: [day] }) as number),
});

/** Mean number of preparations on each day. */
export const dailyPreparations = calculation<{ counts: readonly Counts[] }, number[]>({
	key: "daily_preparations",
	label: say`Preparations of each day, average`,
	unit: say`preparations`,
	formula: say`The mean of each day's preparations.`,
	source: sources.thinning,
	inputs: { counts: { label: say`Preparations of each day`, unit: say`preparations` } },
	example: { inputs: { counts: [once(0.5), always(2)] }, result: [0.5, 2], within: 1e-12 },
	compute: ({ counts }) => counts.map(mean),
});

/** Preparations of all days of the horizon. */
export function preparationsAhead({ days }: Horizon): Figure<number[]> {
	return derive(dailyPreparations, {
		counts: byDate(
			say`Preparations of each day`,
			say`preparations`,
			days,
			(day) => day.preparationCounts,
		),
	});
}
