import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import type { ComputedRow } from "../../computedTable.ts";
import { enoughOf100, farSafer, oneLess } from "../../counts/enoughOf100.ts";
import { askedOf } from "../../counts/promiseOf.ts";
import { valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import type { howSafeSheet } from "../../sheets/howSafe.ts";
import { definition } from "../../source.ts";

export type SafetyRow = ComputedRow<typeof howSafeSheet>;

/** What one thing costs, where that is known. */
export type PriceEach = Figure<number> | undefined;

export const blank = (label: string) => nameFigure(label, null);

const asked = calculation<{ confidence: number }, number>({
	key: "asked_of_100",
	label: say`Asked`,
	unit: say`of 100`,
	formula: say`How sure the plan should be × 100.`,
	source: definition,
	inputs: { confidence: { label: say`How sure the plan should be`, unit: say`share` } },
	example: { inputs: { confidence: 0.95 }, result: 95, within: 1e-9 },
	compute: ({ confidence }) => 100 * confidence,
});

export const beyond = calculation<{ setAside: number; expected: number }, number>({
	key: "beyond",
	label: say`Beyond the average`,
	unit: say`see unit`,
	formula: say`Prepare for − average; 0 where that is less than 0.`,
	source: definition,
	inputs: {
		setAside: { label: say`Prepare for`, unit: say`see unit` },
		expected: { label: say`Average`, unit: say`see unit` },
	},
	example: { inputs: { setAside: 1, expected: 0.1 }, result: 0.9, within: 1e-12 },
	compute: ({ setAside, expected }) => Math.max(0, setAside - expected),
});

const cost = calculation<{ beyond: number; each: number }, number>({
	key: "cost_beyond",
	label: say`That costs`,
	unit: say`currency`,
	formula: say`Beyond the average × price of one.`,
	source: definition,
	inputs: {
		beyond: { label: say`Beyond the average`, unit: say`see unit`, min: 0 },
		each: { label: say`Price of one`, unit: say`currency`, min: 0 },
	},
	example: { inputs: { beyond: 0.9, each: 1.2 }, result: 1.08, within: 1e-12 },
	compute: ({ beyond: amount, each }) => amount * each,
});

/**
 * How surely something set aside is enough, beside what was asked and with the next smaller amount.
 *
 * @param of what it was set aside of; its own use where left out
 * @param smaller the next smaller amount there is; the next that may come where left out
 */
export function safetyOf(
	setAside: Figure,
	of: Figure = setAside,
	smaller?: Figure,
):
	| Pick<SafetyRow, "asked_of_100" | "enough_of_100" | "one_less" | "one_less_of_100" | "far_safer">
	| undefined {
	const from = askedOf(of);
	if (!from || !setAside.outcome.ok) return undefined;
	const { counts, size } = from.amounts;
	// Why it is so likely is asked of what was set aside.
	const { label, unit, origin } = of;
	const likely = {
		counts: { label, unit, origin, outcome: { ok: true as const, value: counts } },
		size: nameFigure(say`One of them is`, size),
	};
	const less = smaller ?? derive(oneLess, { ...likely, amount: setAside });
	const asked_of_100 = derive(asked, { confidence: from.confidence });
	const enough = derive(enoughOf100, { ...likely, amount: setAside });
	return {
		asked_of_100,
		enough_of_100: enough,
		one_less: less,
		one_less_of_100: derive(enoughOf100, { ...likely, amount: less }),
		far_safer: derive(farSafer, { asked: asked_of_100, enough: enough as Figure<number> }),
	};
}

/** What is beyond the mean, and its price. */
export function beyondOf(
	setAside: Figure,
	expected: Figure,
	each: PriceEach,
): Pick<SafetyRow, "beyond" | "cost"> {
	const more = derive(beyond, { setAside, expected });
	return {
		beyond: more,
		cost: each ? derive(cost, { beyond: more, each }) : blank(say`That costs`),
	};
}

/** A share of 100 in words, down to one decimal: what a number keeps is never said to be more. */
export function of100(figure: Figure<number | null>): number | undefined {
	const value = valueIn(figure);
	return typeof value === "number" ? Math.floor(10 * value + 1e-6) / 10 : undefined;
}
