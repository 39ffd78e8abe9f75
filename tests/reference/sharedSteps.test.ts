import { describe, expect, test } from "vitest";
import { setAside } from "../../src/core/counts/counts.ts";
import { soaks } from "../../src/core/rounds/loads.ts";
import type { RoundsOfDay } from "../../src/core/rounds/roundsOfDay.ts";
import { commonStep } from "../../src/core/stock/commonStep.ts";
import { stepsUsed } from "../../src/core/stock/stepsUsed.ts";
import type { UseInputs } from "../../src/core/stock/useInputs.ts";
import { useSetAside } from "../../src/core/stock/useSetAside.ts";
import { answerOf } from "../core/answerOf.ts";

/**
 * Use of kits that differ or of very many rounds, whose possible amounts are too many to be told apart, beside the exact
 * sum of all of them: never less, and never as much as 1 in 200 more.
 */
const none = { perDay: 0, perRound: 0, perLoad: [0], perKit: [0], perDescale: 0 };
const levels = [0.5, 0.8, 0.95, 0.99];
const MOST_MORE = 1.005;
/** Rates are whole multiples of one of these. */
const STEPS = [1, 0.5, 0.25, 0.1, 0.001];
const stepOf = (rates: UseInputs["rates"]) =>
	STEPS.find((step) =>
		Object.values(rates)
			.flat()
			.every((rate) => Math.abs(rate / step - Math.round(rate / step)) < 1e-9),
	) as number;

const day = (...byKind: number[][]): RoundsOfDay => {
	const kits = (byKind[0] as number[]).map((_, i) =>
		byKind.reduce((sum, kind) => sum + (kind[i] as number), 0),
	);
	return { kind: "in_rounds", starts: kits.map((_, i) => 60 * i), kits, byKind };
};
const days = (count: number, of: RoundsOfDay) => Array.from({ length: count }, () => of);

const cases: readonly (readonly [
	string,
	Partial<UseInputs> & Pick<UseInputs, "rates" | "days">,
])[] = [
	[
		"a dear kind that hardly ever comes",
		{ rates: { ...none, perKit: [1, 997] }, days: [day([1.2, 0.4], [0.001, 0.002])] },
	],
	[
		"so dear that the rest is a thousandth of what is possible",
		{ rates: { ...none, perKit: [0.1, 999.9] }, days: [day([0.3], [1e-4])] },
	],
	[
		"mostly nothing at all",
		{ rates: { ...none, perRound: 3, perKit: [731, 1009] }, days: [day([0.01], [0.02])] },
	],
	[
		"awkward fractions of a few kits",
		{ rates: { ...none, perKit: [1.237, 0.891] }, days: [day([0.6, 0.2], [0.3, 0.1])] },
	],
	[
		"rounds, loads and kits",
		{
			rates: { ...none, perRound: 41, perLoad: [17], perKit: [211, 307] },
			days: days(3, day([0.8, 0.5], [0.3, 1.1])),
			loads: soaks(2),
		},
	],
	[
		"with descalings",
		{
			rates: { ...none, perRound: 13, perKit: [89, 157], perDescale: 611 },
			days: days(2, day([0.8, 0.5], [0.3, 0.2])),
			descaleEvery: 3,
		},
	],
	[
		"one kind alone with descalings, in a week of more than a hundred rounds",
		{
			rates: { ...none, perRound: 13, perLoad: [17], perKit: [211], perDescale: 611 },
			days: days(7, day(new Array<number>(15).fill(0.1))),
			descaleEvery: 3,
		},
	],
	[
		"one kind alone with descalings, in fewer rounds of very many amounts",
		{
			rates: { ...none, perRound: 1300.7, perLoad: [17], perKit: [211.3], perDescale: 611 },
			days: days(7, day(new Array<number>(5).fill(0.1))),
			descaleEvery: 3,
		},
	],
	[
		"one kind alone without descalings, in a week of more than 30 rounds of very many amounts",
		{
			rates: { ...none, perRound: 1300.7, perLoad: [17], perKit: [211.3] },
			days: days(7, day(new Array<number>(5).fill(0.1))),
		},
	],
	[
		"two weeks",
		{ rates: { ...none, perKit: [29, 53.5] }, days: days(14, day([0.8, 0.5], [0.3, 1.1])) },
	],
	[
		"what goes by the day as well",
		{ rates: { ...none, perDay: 7, perKit: [1.25, 400] }, days: [day([0.2], [0.03])] },
	],
];

describe("use that is counted in shared steps is the exact sum, a little on the safe side", () => {
	test.each(cases)("%s", (_what, change) => {
		const inputs: UseInputs = { loads: soaks(3), descaleEvery: 0, ...change };
		expect(commonStep(inputs).more, "steps are shared").toBeGreaterThan(0);
		const size = stepOf(inputs.rates);
		const whole = { size, of: (amount: number) => Math.round(amount / size), more: 0 };
		const exact = stepsUsed(inputs, { ...whole, most: Number.POSITIVE_INFINITY });
		for (const confidence of levels) {
			const wanted = setAside(exact, confidence) * size;
			const found = answerOf(useSetAside, { ...inputs, confidence });
			expect(found, `for ${confidence}`).toBeGreaterThanOrEqual(wanted - 1e-9);
			expect(found, `for ${confidence}`).toBeLessThanOrEqual(wanted * MOST_MORE + 1e-9);
		}
	});
});
