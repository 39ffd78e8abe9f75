import type { Amounts } from "../amounts.ts";
import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { definition, estimate } from "../source.ts";
import { chanceEnough, nextSmaller } from "./chanceEnough.ts";
import type { Counts } from "./counts.ts";

/** None with the chance 0.6, one with 0.3, two with 0.1; each is 30 L: for the examples. */
const few: Counts = { first: 0, chance: Float64Array.of(0.6, 0.3, 0.1) };

interface Inputs extends Amounts {
	readonly amount: number | null;
}

const inputs = {
	counts: { label: say`How likely each number is`, unit: "" },
	size: { label: say`One of them is`, unit: say`see unit` },
	amount: { label: say`Prepare for`, unit: say`see unit` },
};

/** On how many of 100 such days, or plans, an amount is enough. */
export const enoughOf100 = calculation<Inputs, number | null>({
	key: "enough_of_100",
	label: say`Enough on`,
	unit: say`of 100`,
	formula: say`The chances of all amounts up to this one, added up, × 100.`,
	source: definition,
	inputs,
	example: { inputs: { counts: few, size: 30, amount: 30 }, result: 90, within: 1e-9 },
	compute: ({ amount, ...amounts }) =>
		amount === null ? null : 100 * chanceEnough(amounts, amount),
});

/** The next smaller amount. */
export const oneLess = calculation<Inputs, number | null>({
	key: "one_less",
	label: say`The next smaller amount`,
	unit: say`see unit`,
	formula: say`The largest amount below it that may come; blank where there is none.`,
	source: definition,
	inputs,
	example: { inputs: { counts: few, size: 30, amount: 60 }, result: 30, within: 1e-9 },
	compute: ({ amount, ...amounts }) =>
		(amount === null ? undefined : nextSmaller(amounts, amount)) ?? null,
});

/** A number is far safer than asked where it falls short at most this many times as often (a rule of ours). */
const FAR_SAFER = 0.2;

/** Whether a number keeps far more than was asked. */
export const farSafer = calculation<{ asked: number; enough: number }, "yes" | "no">({
	key: "far_safer",
	label: say`Far safer than asked`,
	unit: "",
	formula: say`yes where it falls short at most a fifth as often as was asked: a rule of this program.`,
	source: estimate,
	inputs: {
		asked: { label: say`Asked`, unit: say`of 100` },
		enough: { label: say`Enough on`, unit: say`of 100` },
	},
	example: { inputs: { asked: 95, enough: 99.7 }, result: "yes", within: 0 },
	compute: ({ asked, enough }) => (100 - enough <= FAR_SAFER * (100 - asked) ? "yes" : "no"),
});
