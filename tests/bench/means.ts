import {
	type Calculation,
	calculation,
	derive,
	type Figure,
	nameFigure,
} from "../../src/core/calculation.ts";
import { measureOut, type Preparation } from "../../src/core/chlorine/measureOut.ts";
import { preparationsOfDay } from "../../src/core/chlorine/preparationsOfDay.ts";
import { expectedOf } from "../../src/core/counts/expectedOf.ts";
import { countTimes } from "../../src/core/countTimes.ts";
import { expiriesPerDay } from "../../src/core/kits/expiriesPerDay.ts";
import { kitsToReprocess } from "../../src/core/kits/kitsToReprocess.ts";
import { kitUses } from "../../src/core/kits/kitUses.ts";
import { memoized } from "../../src/core/memoize.ts";
import { partOf } from "../../src/core/partOf.ts";
import { flatDay } from "../../src/core/rounds/dayClock.ts";
import { soaks } from "../../src/core/rounds/loads.ts";
import { kitsInRounds, oneRound, type RoundsOfDay } from "../../src/core/rounds/roundsOfDay.ts";
import { loadsOfDay, roundsThatRun } from "../../src/core/rounds/roundsThatRun.ts";
import { definition } from "../../src/core/source.ts";
import type { UseInputs } from "../../src/core/stock/useInputs.ts";
import { useExpected } from "../../src/core/stock/useSetAside.ts";
import { vinegarExpected } from "../../src/core/vinegar/vinegarPerDescale.ts";
import { MEANS, UNIT } from "./sheet.ts";

/** One way of doing the core's calculations: with bare values, or with figures that can be asked "why?". */
interface Way<F> {
	given(value: unknown): F;
	run(calculation: Calculation, inputs: Record<string, F>): F;
	numberIn(result: F): number;
}

export const bareValues: Way<unknown> = {
	given: (value) => value,
	run: (calculation, inputs) => calculation.compute(inputs),
	numberIn: Number,
};

export const figures: Way<Figure<unknown>> = {
	given: (value) => nameFigure("", value),
	run: (calculation, inputs) => derive(calculation, inputs),
	numberIn: ({ outcome }) => (outcome.ok ? Number(outcome.value) : Number.NaN),
};

const mean = expectedOf("mean", "", "");
const times = countTimes("times", "", "", { label: "", unit: "" }, { label: "", unit: "" });
const quantity = partOf<Preparation, "quantity">(measureOut, "quantity", "", "");
const none = { label: "", unit: "" };
const useOnDay = calculation<Omit<UseInputs, "days"> & { readonly day: RoundsOfDay }, number>({
	key: "use_on_day",
	label: "",
	unit: "",
	formula: "",
	source: definition,
	inputs: { rates: none, day: none, loads: none, descaleEvery: none },
	example: {
		inputs: {
			rates: { perDay: 1, perRound: 0, perLoad: [0], perKit: [2], perDescale: 0 },
			day: oneRound(0.5),
			loads: soaks(3),
			descaleEvery: 0,
		},
		result: 2,
		within: 1e-12,
	},
	compute: ({ day, ...use }) => useExpected.compute({ ...use, days: [day] }),
});

/** As in the plan, days that are alike cost one day's work. */
const arrivals = memoized(kitsInRounds);
const running = memoized(roundsThatRun);
const loadCounts = memoized(loadsOfDay);
const preparations = memoized(preparationsOfDay);
const useOfDay = memoized(useOnDay);

const rates = { perDay: 0, perRound: 0, perLoad: [0], perKit: [0], perDescale: 0 };
const ratesOf = {
	gauze: { ...rates, perKit: [UNIT.gauzePerKit] },
	gloves: { ...rates, perRound: UNIT.glovesPerRound },
};
/** The same object each day, by which what is alike is known. */
const oneMethod = soaks(UNIT.kitsInLoad);
/** Rounds of the small unit, in minutes after midnight. */
const starts = [7 * 60, 14 * 60, 21 * 60];

/** The means of the sheet by the core's own calculations: totals over the days, in the order of MEANS. */
export function totalsBy<F>({ given, run, numberIn }: Way<F>, births: Iterable<number>): number[] {
	const unit = Object.fromEntries(Object.entries(UNIT).map(([key, n]) => [key, given(n)])) as {
		readonly [K in keyof typeof UNIT]: F;
	};
	const known = { starts: given(starts), hourShares: given(flatDay), made: given("each_round") };
	const [gauze, gloves] = [given(ratesOf.gauze), given(ratesOf.gloves)];
	const gramsPerLitre = UNIT.stockPct * 10;
	const whole = run(measureOut, {
		strength: given({ form: "liquid", gramsPerLitre }),
		litres: unit.litres,
		targetPct: unit.strengthPct,
		stepMl: unit.stepMl,
		stepGrams: given(1),
	});
	const productMl = run(quantity, { whole });
	const totals = MEANS.map(() => 0);
	let yesterday: { readonly uses: F; readonly expiries: F } | undefined;
	for (const count of births) {
		const uses = run(kitUses, { births: given(count), kitsPer100Births: unit.usesPer100 });
		const { kitsInService, readyLifeDays } = unit;
		const expiries = run(expiriesPerDay, { kitsInService, usesPerDay: uses, readyLifeDays });
		const day = run(arrivals, {
			...known,
			usesYesterday: yesterday?.uses ?? uses,
			usesToday: uses,
			expiriesYesterday: yesterday?.expiries ?? expiries,
			expiriesToday: expiries,
		});
		yesterday = { uses, expiries };
		const { kitsInLoad } = unit;
		const rounds = run(mean, { counts: run(running, { rounds: day }) });
		const loads = run(mean, { counts: run(loadCounts, { rounds: day, kitsInLoad }) });
		const life = { rounds: day, made: known.made, lifeHours: given(24) };
		const made = run(mean, { counts: run(preparations, life) });
		const buckets = run(times, { count: loads, each: unit.buckets });
		const everyRounds = unit.descaleEvery;
		const use = { day, loads: given(oneMethod), descaleEvery: everyRounds };
		[
			given(count),
			uses,
			expiries,
			run(kitsToReprocess, { uses, expiries }),
			rounds,
			loads,
			run(times, { count: made, each: unit.litres }),
			run(times, { count: made, each: productMl }),
			buckets,
			run(times, { count: buckets, each: unit.bucketLitres }),
			run(vinegarExpected, { rounds, everyRounds, litresEach: unit.vinegarLitres }),
			run(useOfDay, { ...use, rates: gauze }),
			run(useOfDay, { ...use, rates: gloves }),
		].forEach((figure, i) => {
			totals[i] = (totals[i] as number) + numberIn(figure);
		});
	}
	return totals;
}
