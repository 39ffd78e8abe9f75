import { calculation } from "../calculation.ts";
import { always, type Counts, mean, once } from "../counts/counts.ts";
import { confidenceInput } from "../counts/setAsideOf.ts";
import { sumAtLevel } from "../counts/sumAtLevel.ts";
import { memoizeByObject } from "../memoize.ts";
import { say } from "../say.ts";
import { commonPractice } from "../source.ts";
import { sources } from "../sources.ts";
import { countingSteps } from "./commonStep.ts";
import { type CountedUse, countedFinely } from "./countedFinely.ts";
import { leftOut } from "./withTheRest.ts";

interface Inputs {
	/** Preparations of each day. */
	readonly preparations: readonly Counts[];
	/** Product for one preparation on each day, as measured out. */
	readonly quantities: readonly number[];
}

const inputs = {
	preparations: { label: say`Preparations of each day`, unit: say`preparations` },
	quantities: { label: say`Product for one preparation on each day`, unit: say`mL, g or tablets` },
};

/** Mean use of the product over some days; a preparation takes more of it as it fades. */
export const productExpected = calculation<Inputs, number>({
	key: "chlorine_expected",
	label: say`Product, average`,
	unit: say`mL, g or tablets`,
	formula: say`Average preparations × product for one preparation that day, added up over the days.`,
	source: sources.madeUpTo,
	inputs,
	example: {
		inputs: { preparations: [once(0.5), always(2)], quantities: [100, 110] },
		result: 0.5 * 100 + 2 * 110,
		within: 1e-9,
	},
	compute: ({ preparations, quantities }) =>
		preparations.reduce((sum, counts, day) => sum + mean(counts) * (quantities[day] as number), 0),
});

/** What to set aside of the product for some days. */
export const productSetAside = calculation<Inputs & { readonly confidence: number }, number>({
	key: "chlorine_set_aside",
	label: say`Product, prepare for`,
	unit: say`mL, g or tablets`,
	formula: say`The smallest number that is enough with at least the chance the plan asks for: preparations × product for one, added up over the days exactly.`,
	source: commonPractice,
	rounding: say`A possible amount of use, never less than asked for.`,
	inputs: { ...inputs, confidence: confidenceInput },
	example: {
		// 0, 100, 110 or 210, each with the chance 0.25: three of them are enough for 0.75.
		inputs: { preparations: [once(0.5), once(0.5)], quantities: [100, 110], confidence: 0.7 },
		result: 110,
		within: 1e-9,
	},
	mayCome: ({ confidence, ...inputs }) => {
		const { used, steps } = counted(inputs, confidence);
		const { preparations, quantities } = inputs;
		// A whole pack may be far more than is set aside, and then more amounts are asked about.
		const isAll = leftOut(used) === 0;
		const counts = isAll ? used : sumAtLevel(preparations, quantities.map(steps.of));
		return { counts, size: steps.size };
	},
	compute: ({ confidence, ...inputs }) => counted(inputs, confidence).setAside,
});

/** Of what is set aside: a day has few preparations, so its sums are soon multiplied out. */
const STEPS = 5000;

function counted({ preparations, quantities }: Inputs, confidence: number): CountedUse {
	return countedOf(preparations, quantities, confidence);
}

/** Remembered, because how surely what was set aside is enough is asked of the same. */
const countedOf = memoizeByObject(
	(
		preparations: Inputs["preparations"],
		quantities: Inputs["quantities"],
		confidence: number,
	): CountedUse => {
		const first = countingSteps(quantities, mostUsed(preparations, quantities), quantities.length);
		return countedFinely(quantities, confidence, first, STEPS, ({ of, most }) =>
			sumAtLevel(preparations, quantities.map(of), most),
		);
	},
);

/** An amount that use over the days hardly ever reaches: its mean and eight times its spread. */
function mostUsed(preparations: readonly Counts[], quantities: readonly number[]): number {
	let use = 0;
	let variance = 0;
	preparations.forEach((counts, day) => {
		const each = quantities[day] as number;
		const ofDay = meanAndVariance(counts);
		use += ofDay.mean * each;
		variance += ofDay.variance * each * each;
	});
	return use + 8 * (Math.sqrt(variance) + Math.max(0, ...quantities));
}

/** Asked again for every lot that a preparation may be mixed from. */
const meanAndVariance = memoizeByObject((counts: Counts) => {
	const m = mean(counts);
	let variance = 0;
	for (let i = 0; i < counts.chance.length; i++) {
		const apart = counts.first + i - m;
		variance += (counts.chance[i] as number) * apart * apart;
	}
	return { mean: m, variance };
});
