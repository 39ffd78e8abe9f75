import { expect } from "vitest";
import type { Amounts } from "../../src/core/amounts.ts";
import type { Calculation } from "../../src/core/calculation.ts";
import { chanceEnough, nextSmaller } from "../../src/core/counts/chanceEnough.ts";
import { always } from "../../src/core/counts/counts.ts";
import { answerOf } from "./answerOf.ts";

/**
 * What a calculation that sets aside says may come has the result of its example as the least
 * amount that is surely enough; what follows from something set aside is surely enough where that
 * is, and the most that may come is no whole one less.
 */
export function expectPromise(calculation: Calculation): void {
	const inputs = calculation.example?.inputs ?? {};
	const result = answerOf(calculation, inputs);
	const { mayCome, follows } = calculation;
	if (mayCome) {
		const amounts = mayCome(inputs);
		expect(chanceEnough(amounts, result)).toBeGreaterThanOrEqual(inputs.confidence);
		const less = nextSmaller(amounts, result) as number;
		expect(chanceEnough(amounts, less)).toBeLessThan(inputs.confidence);
	}
	if (follows) {
		const amounts = follows.turned(knownAs(inputs[follows.input]), inputs);
		expect(chanceEnough(amounts, result)).toBe(1);
		const { first, chance } = amounts.counts;
		expect((first + chance.length - 1) * amounts.size).toBeGreaterThan(result - 1);
	}
}

/** An amount that is known: so many whole ones, or one of a part. */
function knownAs(amount: number): Amounts {
	return Number.isInteger(amount)
		? { counts: always(amount), size: 1 }
		: { counts: always(1), size: amount };
}
