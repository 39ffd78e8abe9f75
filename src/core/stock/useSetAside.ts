import { calculation } from "../calculation.ts";
import { confidenceInput } from "../counts/setAsideOf.ts";
import { memoize, memoizeByObject } from "../memoize.ts";
import { onceAsked } from "../onceAsked.ts";
import { soaks } from "../rounds/loads.ts";
import { oneRound, type RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { say } from "../say.ts";
import { commonPractice } from "../source.ts";
import { sources } from "../sources.ts";
import { aboutEnough } from "./aboutEnough.ts";
import { commonStep, finerSteps, type Steps } from "./commonStep.ts";
import { type CountedUse, countedFinely } from "./countedFinely.ts";
import { meanUse } from "./meanUse.ts";
import { type SetAsideExactly, setAsideExactly } from "./setAsideExactly.ts";
import { nodesOfDays, usedOverDays } from "./usedOverDays.ts";
import { type UseInputs, useHangsOn } from "./useInputs.ts";
import { HARDLY_ANY, withoutHardlyAny } from "./withoutHardlyAny.ts";
import { withTheRest } from "./withTheRest.ts";

const inputs = {
	rates: {
		label: say`Use by day, round, load, kit and descaling`,
		unit: say`in the item's measure`,
	},
	days: { label: say`Kits in each round, average`, unit: say`kits` },
	loads: { label: say`Kits in one load of each method`, unit: say`kits` },
	descaleEvery: { label: say`Descale every so many rounds that run`, unit: say`rounds`, min: 0 },
};

/** Mean use of an item over some days. */
export const useExpected = calculation<UseInputs, number>({
	key: "use_expected",
	label: say`Use, average`,
	unit: say`in the item's measure`,
	formula: say`Use a day × days + use a round × average rounds + use a load × average loads + use a kit × average kits + use a descaling × average rounds ÷ rounds between descalings.`,
	source: sources.thinning,
	inputs,
	example: {
		// 1 a day + 2 × 0.5 rounds + 4 × 0.5 loads + 3 × 0.693147 kits + 7 × 0.5 ÷ 7 descalings.
		inputs: {
			rates: { perDay: 1, perRound: 2, perLoad: [4], perKit: [3], perDescale: 7 },
			days: [oneRound(Math.LN2)],
			loads: soaks(100),
			descaleEvery: 7,
		},
		result: 6.579442,
		within: 1e-6,
	},
	compute: meanUse,
});

/** What to set aside of an item for some days, from the exact distribution of its use. */
export const useSetAside = calculation<UseInputs & { readonly confidence: number }, number>({
	key: "use_set_aside",
	label: say`Use, prepare for`,
	unit: say`in the item's measure`,
	formula: say`The smallest number that is enough with at least the chance the plan asks for, from the distribution of the use: the rounds of all days are added up as they come; forecast days share the level of births, and are added up at each level it may have.`,
	source: commonPractice,
	rounding: say`Up to a possible amount of use, exactly where kits are alike and numbers of rounds, loads and kits few. Otherwise quantities without a common measure, those of more than 50\u202f000 possible amounts, and those of more than 100 rounds with descalings, or of fewer where rounds times possible amounts are more than 1\u202f500\u202f000, are rounded up, by less than 1 in 100. Of those, what comes to at most 1 in 1\u202f000 is counted at an amount that is hardly ever exceeded, and where rounds times levels of births are more than 200, fewer amounts are told apart. How likely far more than this is goes by the mean, variance and skewness of the use.`,
	inputs: { ...inputs, confidence: confidenceInput },
	example: {
		// A round with a mean of 3 kits: 6 are enough for 95 of 100, at 2 each.
		inputs: {
			rates: { perDay: 0, perRound: 0, perLoad: [0], perKit: [2], perDescale: 0 },
			days: [oneRound(3)],
			loads: soaks(3),
			descaleEvery: 7,
			confidence: 0.95,
		},
		result: 12,
		within: 1e-9,
	},
	mayCome: ({ confidence, ...use }) => foundOver(use.days)(use, confidence).amounts(),
	compute: ({ confidence, ...use }) => foundOver(use.days)(use, confidence).setAside,
});

/**
 * Of what is set aside: sums of so many are multiplied out for each round, and each level of births. A little more of
 * them would ask for twice as long a transform, where descalings are followed.
 */
const STEPS = 1900;
/** The same where rounds times levels of births are more than `MUCH`. */
const FEWER_STEPS = 1200;
export const MUCH = 200;

/** What is set aside is asked again when someone wants to know how safe it is. */
const foundOver = memoizeByObject((_days: readonly RoundsOfDay[]) =>
	memoize(found, (use, confidence) => [confidence, ...useHangsOn(use)]),
);

function found(use: UseInputs, confidence: number): SetAsideExactly {
	const exactly = setAsideExactly(use, confidence);
	if (exactly) return exactly;
	const { used, steps, setAside } = counted(use, confidence);
	const { size } = steps;
	return { setAside, amounts: onceAsked(() => ({ counts: withTheRest(used, size, use), size })) };
}

function counted(use: UseInputs, confidence: number): CountedUse {
	const first = commonStep(use);
	const fewer = first.more > 0 ? withoutHardlyAny(use, confidence) : undefined;
	if (fewer) {
		const found = inSteps(fewer.use, confidence, commonStep(fewer.use));
		if (fewer.byTheDay <= HARDLY_ANY * found.setAside) return found;
	}
	return inSteps(use, confidence, first);
}

function inSteps(use: UseInputs, confidence: number, first: Steps): CountedUse {
	const amounts = Object.values(use.rates).flat();
	const about = first.more > 0 ? aboutEnough(use, confidence) : 0;
	const count = isMuch(use) ? FEWER_STEPS : STEPS;
	const steps = about > 0 ? finerSteps(amounts, about, count) : first;
	return countedFinely(amounts, confidence, steps, count, (steps) => usedOverDays(use, steps));
}

/** Whether each step is followed through so many rounds, at so many levels of births, that fewer steps are worth it. */
function isMuch({ days }: UseInputs): boolean {
	const rounds = days.reduce((sum, { kits }) => sum + kits.length, 0);
	return rounds * nodesOfDays(days).length > MUCH;
}
