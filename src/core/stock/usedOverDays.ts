import type { Counts } from "../counts/counts.ts";
import { levelNodes } from "../counts/levelNodes.ts";
import { spanShape } from "../counts/spanShape.ts";
import { moved } from "../counts/spread.ts";
import { DAYS_ADDED_EXACTLY, nodesOfSum, sumAtLevel } from "../counts/sumAtLevel.ts";
import { memoize, memoizeByObject } from "../memoize.ts";
import { ofEach } from "../ofEach.ts";
import { givenLevel, kitsAtLevel, knownAtLevel } from "../rounds/atLevel.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { addedTogether } from "./addedTogether.ts";
import type { Steps } from "./commonStep.ts";
import { descaledAtLevel } from "./descaledAtLevel.ts";
import { meanUse } from "./meanUse.ts";
import { momentsOfUse } from "./momentsOfUse.ts";
import { ratesInSteps, stepsUsed, usedTogether } from "./stepsUsed.ts";
import { usedByKits } from "./usedByKits.ts";
import { type UseInputs, useHangsOn } from "./useInputs.ts";

/** One descaling more or less is then hardly any of the use: in parts of its mean. */
const HARDLY_ANY = 0.005;

/**
 * How likely each amount of use over the days is, counted in steps: forecast days share
 * the level of births. Items that use up alike, in steps of their own, share it.
 */
export function usedOverDays(use: UseInputs, steps: Steps): Counts {
	const [only] = use.days;
	return overDays(only && use.days.length === 1 ? only : use.days)(use, steps);
}

/** Of a day alone by the day, which an edit elsewhere leaves the same object. */
const overDays = memoizeByObject((_days: RoundsOfDay | readonly RoundsOfDay[]) =>
	memoize(addedOverDays, hangsOn),
);

const ofDay = memoizeByObject((_day: RoundsOfDay) => memoize(stepsUsed, hangsOn));

/** All that use over known days hangs on, in steps. */
function hangsOn(use: UseInputs, steps: Steps): readonly number[] {
	const perDay = steps.of(use.rates.perDay * use.days.length);
	const rates = { ...ratesInSteps(use, steps), perDay };
	return [steps.most, ...useHangsOn({ ...use, rates })];
}

function addedOverDays(use: UseInputs, steps: Steps): Counts {
	const byKits = usedByKits(use, steps);
	if (byKits) return byKits;
	const { rates, days, loads, descaleEvery } = use;
	const descales = rates.perDescale > 0 && descaleEvery > 0;
	const isLong = days.length > DAYS_ADDED_EXACTLY;
	const together = descales ? undefined : togetherAtNodes(use, steps);
	if (together) return together;
	if (!days.some((day) => day.forecast)) {
		if (!descales)
			return addedTogether(
				ofEach(days, (day) => ofDay(day)({ ...use, days: [day], descaleEvery: 0 }, steps)),
				steps.most,
			);
		if (!isLong || rates.perDescale > HARDLY_ANY * meanUse(use)) return stepsUsed(use, steps);
	}
	if (!descales) return dayByDay(use, steps);
	if (!isLong) {
		const nodes = nodesAddedUp(days);
		const { levels } = levelsOf(days);
		return nodes ? stepsUsed(use, steps, nodes) : descaledAtLevel(use, spanShape(levels), steps);
	}
	// Over many days a round's part of a descaling, and at most one begun, to the safe side.
	const perRound = rates.perRound + rates.perDescale / descaleEvery;
	const even = { rates: { ...rates, perRound, perDescale: 0 }, days, loads, descaleEvery: 0 };
	return moved(
		dayByDay(even, steps),
		steps.of((rates.perDescale * (descaleEvery - 1)) / descaleEvery),
	);
}

function togetherAtNodes(use: UseInputs, steps: Steps): Counts | undefined {
	const nodes = nodesAddedUp(use.days);
	return nodes && usedTogether(use, steps, nodes);
}

/** The nodes at which days are added up; undefined where a total is found by its moments: its nodes would be too few. */
export function nodesAddedUp(days: readonly RoundsOfDay[]) {
	const { levels, kits } = levelsOf(days);
	return nodesOfSum(levels, kits, days.length);
}

/** Without descalings no day hangs on another but by the level. */
function dayByDay(use: UseInputs, steps: Steps): Counts {
	const used = (day: RoundsOfDay) => stepsUsed({ ...use, days: [day] }, steps);
	const momentsOn = momentsOfUse(use, steps);
	const atEachLevel = (day: RoundsOfDay) => ({
		...givenLevel(day, used),
		momentsAt: (factor: number) => momentsOn(knownAtLevel(day)(factor)),
	});
	return sumAtLevel(
		ofEach(use.days, (day) => (day.forecast ? atEachLevel(day) : used(day))),
		undefined,
		steps.most,
	);
}

/** The nodes of the level of births that the days share. */
export function nodesOfDays(days: readonly RoundsOfDay[]) {
	const { levels, kits } = levelsOf(days);
	return levelNodes(spanShape(levels), kits);
}

/** What is not known of the days' births, and the mean kits that go with it. */
const levelsOf = memoizeByObject((days: readonly RoundsOfDay[]) => {
	const levels = days.flatMap(({ forecast }) => (forecast ? [forecast.level] : []));
	return { levels, kits: days.reduce((sum, day) => sum + kitsAtLevel(day), 0) };
});
