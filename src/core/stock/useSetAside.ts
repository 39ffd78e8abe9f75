import { calculation } from "../calculation.ts";
import { mean } from "../counts/counts.ts";
import { groupsOf } from "../counts/groupsOf.ts";
import { poisson } from "../counts/poisson.ts";
import { confidenceInput } from "../counts/setAsideOf.ts";
import { memoizeByObject } from "../memoize.ts";
import { atLevel, nodesOfDay } from "../rounds/atLevel.ts";
import { oneRound, type RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { say } from "../say.ts";
import { commonPractice, sources } from "../sources.ts";
import { amountSetAside, commonStep } from "./commonStep.ts";
import { usedOverDays } from "./usedOverDays.ts";
import type { UseInputs } from "./useInputs.ts";

const inputs = {
	rates: {
		label: say`Use by day, round, load, kit and descaling`,
		unit: say`in the item's measure`,
	},
	days: { label: say`Kits in each round, expected`, unit: say`kits` },
	kitsInLoad: { label: say`Kits in one soak`, unit: say`kits`, min: 1 },
	descaleEvery: { label: say`Descale every so many rounds that run`, unit: say`rounds`, min: 0 },
};

/** Mean use of an item over some days. */
export const useExpected = calculation<UseInputs, number>({
	key: "use_expected",
	label: say`Use, expected`,
	unit: say`in the item's measure`,
	formula: say`Use a day × days + use a round × rounds expected + use a load × loads expected + use a kit × kits expected + use a descaling × rounds expected ÷ rounds between descalings.`,
	source: sources.thinning,
	inputs,
	example: {
		// 1 a day + 2 × 0.5 rounds + 4 × 0.5 loads + 3 × 0.693147 kits + 7 × 0.5 ÷ 7 descalings.
		inputs: {
			rates: { perDay: 1, perRound: 2, perLoad: 4, perKit: [3], perDescale: 7 },
			days: [oneRound(Math.LN2)],
			kitsInLoad: 100,
			descaleEvery: 7,
		},
		result: 6.579442,
		within: 1e-6,
	},
	compute: ({ rates, days, kitsInLoad, descaleEvery }) => {
		let use = rates.perDay * days.length;
		for (const day of days) {
			const { kits, rounds, loads } = meansOfDay(day, kitsInLoad);
			kits.forEach((m, k) => {
				use += (rates.perKit[k] as number) * m;
			});
			use += rates.perRound * rounds + rates.perLoad * loads;
			if (descaleEvery > 0) use += (rates.perDescale * rounds) / descaleEvery;
		}
		return use;
	},
});

/** Mean kits of each kind, rounds that run and loads of a day, which all items share. */
const meansOfDay = memoizeByObject((day: RoundsOfDay, kitsInLoad: number) => {
	const kits = day.byKind.map(() => 0);
	let rounds = 0;
	let loads = 0;
	for (const { factor, weight } of nodesOfDay(day)) {
		const known = atLevel(day, factor);
		const inRounds = known.kind === "in_rounds";
		known.byKind.forEach((ofKind, k) => {
			for (const m of ofKind) kits[k] = (kits[k] as number) + weight * m;
		});
		for (const m of known.kits) {
			rounds += weight * (inRounds ? -Math.expm1(-m) : m);
			loads += weight * (inRounds ? mean(groupsOf(poisson(m), kitsInLoad)) : m);
		}
	}
	return { kits, rounds, loads };
});

/** What to set aside of an item for some days, from the exact distribution of its use. */
export const useSetAside = calculation<UseInputs & { readonly confidence: number }, number>({
	key: "use_set_aside",
	label: say`Use, set aside`,
	unit: say`in the item's measure`,
	formula: say`The smallest number that is enough with at least the chance the plan asks for, from the distribution of the use: the rounds of all days are added up as they come; forecast days share the level of births, and are added up at each level it may have.`,
	source: commonPractice,
	rounding: say`Up to a possible amount of use; quantities without a common measure are rounded up, by less than 1 in 100.`,
	inputs: { ...inputs, confidence: confidenceInput },
	example: {
		// A round with a mean of 3 kits: 6 are enough for 95 of 100, at 2 each.
		inputs: {
			rates: { perDay: 0, perRound: 0, perLoad: 0, perKit: [2], perDescale: 0 },
			days: [oneRound(3)],
			kitsInLoad: 3,
			descaleEvery: 7,
			confidence: 0.95,
		},
		result: 12,
		within: 1e-9,
	},
	mayCome: (use) => {
		const steps = commonStep(use);
		return { counts: usedOverDays(use, steps), size: steps.size };
	},
	compute: ({ confidence, ...use }) => {
		const steps = commonStep(use);
		return amountSetAside(usedOverDays(use, steps), confidence, steps);
	},
});
