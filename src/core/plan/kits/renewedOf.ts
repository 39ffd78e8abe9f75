import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { readyLife } from "../../kits/readyLife.ts";
import type { ReadyLife } from "../../kits/renewalSteps.ts";
import { renewedPerDay } from "../../kits/renewedPerDay.ts";
import { DayClock, flatDay, type HourShares } from "../../rounds/dayClock.ts";
import { lengthOfRounds, minutesOf, type RoundLength } from "../../rounds/roundLength.ts";
import { say } from "../../say.ts";
import { commonPractice } from "../../source.ts";
import { MINUTES_PER_DAY } from "../../values/clock.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { minutesKitsWait } from "../water/hearthFigures.ts";
import { backInRounds } from "./backInRounds.ts";
import type { KindFigures } from "./kindFigures.ts";

interface Inputs {
	readonly starts: readonly number[];
	readonly length: RoundLength;
	readonly usesPerDay: readonly number[];
	readonly hourShares: HourShares;
	readonly kitsInService: number;
}

/**
 * By when the next round's kits are counted on, to decide which kits are renewed in time.
 *
 * From uses alone: how many are renewed is what is asked with it.
 */
const minutesCountedOn = calculation<Inputs, number>({
	key: "minutes_counted_on",
	label: say`Minutes of a round as counted on for renewing kits`,
	unit: "min",
	formula: say`Minutes of the round with most kits, with as many as it has on average when it runs, rounded up; used kits alone.`,
	source: commonPractice,
	inputs: {
		starts: { label: say`Rounds start at`, unit: say`minutes after midnight` },
		length: { label: say`What makes a round long`, unit: "min" },
		usesPerDay: { label: say`Kits used, average`, unit: say`kits/day` },
		hourShares: { label: say`Births through the day`, unit: say`share of each hour` },
		kitsInService: { label: say`Kits in service`, unit: say`kits`, min: 0 },
	},
	example: {
		// 12 hours bring a mean of 0.3 kits, of rounds that run 0.3 ÷ 0.2592 = 1.16.
		inputs: {
			starts: [420, 1140],
			length: { perRound: 30, perKit: 20, loads: [{ minutes: 20, kits: 3 }] },
			usesPerDay: [0.6],
			hourShares: flatDay,
			kitsInService: 4,
		},
		result: 90,
		within: 0,
	},
	compute: ({ starts, length, usesPerDay, hourShares, kitsInService }) => {
		const clock = new DayClock([Math.max(...usesPerDay)], hourShares);
		const last = (starts.at(-1) as number) - MINUTES_PER_DAY;
		const means = starts.map((start, i) => clock.between(starts[i - 1] ?? last, start));
		const most = Math.max(...means);
		const whenItRuns = most === 0 ? 1 : Math.ceil(most / -Math.expm1(-most));
		return minutesOf(length, Math.max(1, Math.min(whenItRuns, kitsInService)));
	},
});

/** Where water is boiled beforehand no kit waits for it. */
export const waterIsReady = nameFigure(say`A used kit waits for its water`, 0);

/** How long ready kits of a kind may be used, and what happens then. */
export function readyLifeOf(
	{ read: { settings } }: UnitFigures,
	{ readyLifeDays }: Pick<KindFigures, "readyLifeDays">,
): Figure<ReadyLife> {
	return derive(readyLife, { days: readyLifeDays, renewal: settings.renew_kits });
}

/** What makes the unit's rounds long. */
export function roundLengthOf(unit: UnitFigures): Figure<RoundLength> {
	const workers = unit.read.settings.workers_per_round;
	return derive(lengthOfRounds, { steps: unit.steps, workers, loads: unit.loads });
}

/** By when the next round's kits are counted on. @param uses of all kinds together */
export function minutesCountedOnOf(unit: UnitFigures, uses: Figure<number[]>): Figure {
	return derive(minutesCountedOn, {
		starts: unit.timetable.starts,
		length: roundLengthOf(unit),
		usesPerDay: uses,
		hourShares: unit.hourShares,
		kitsInService: unit.kitsInService,
	});
}

/** Kits of a kind that rounds renew on each day of the plan, on average. */
export function renewedOf(
	unit: UnitFigures,
	kind: KindFigures,
	usesPerDay: Figure<number[]>,
	plannedMinutes: Figure,
): Figure {
	const reprocessing = derive(backInRounds, {
		starts: unit.timetable.starts,
		length: roundLengthOf(unit),
		plannedMinutes,
		usesPerDay,
		hourShares: unit.hourShares,
		life: readyLifeOf(unit, kind),
		waterMinutes: minutesKitsWait(unit) ?? waterIsReady,
	});
	return derive(renewedPerDay, { kitsInService: kind.kitsInService, reprocessing });
}
