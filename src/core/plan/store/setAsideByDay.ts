import { sumOf } from "../../counts/sumOf.ts";
import { memoize, memoized } from "../../memoize.ts";
import type { RoundsOfDay } from "../../rounds/roundsOfDay.ts";
import { amountSetAside, commonStep, type Steps } from "../../stock/commonStep.ts";
import type { Rates } from "../../stock/ratesOfItem.ts";
import { stepsUsed } from "../../stock/stepsUsed.ts";
import { useExpected, useSetAside } from "../../stock/useSetAside.ts";

const ofDay = { expected: memoized(useExpected), setAside: memoized(useSetAside) };

/** Mean use: means add up, so each day's is worked out by itself, once for all days that are alike. */
export const expectedByDay: typeof useExpected = {
	...useExpected,
	compute: ({ days, ...use }) => {
		let sum = 0;
		for (const day of days) sum += ofDay.expected.compute({ ...use, days: [day] }) as number;
		return sum;
	},
};

const stepsOfDay = memoize((rates: Rates, steps: Steps, kitsInLoad: number, day: RoundsOfDay) =>
	stepsUsed({ rates, days: [day], kitsInLoad, descaleEvery: 0 }, steps),
);

/** What to set aside: likewise, but where a descaling or a shared level makes each round hang on the others. */
export const setAsideByDay: typeof useSetAside = {
	...useSetAside,
	compute: (use) => {
		const { rates, days, kitsInLoad, descaleEvery, confidence } = use;
		if (days.length === 1) return ofDay.setAside.compute(use);
		const apart = days.some((day) => day.forecast);
		if (apart || (rates.perDescale > 0 && descaleEvery > 0)) return useSetAside.compute(use);
		const steps = commonStep(use);
		const used = days.map((day) => stepsOfDay(rates, steps, kitsInLoad, day));
		return amountSetAside(sumOf(used), confidence, steps);
	},
};
