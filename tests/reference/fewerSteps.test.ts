import { describe, expect, test } from "vitest";
import type { Amounts } from "../../src/core/amounts.ts";
import { chanceEnough } from "../../src/core/counts/chanceEnough.ts";
import { chanceAtMost, setAside } from "../../src/core/counts/counts.ts";
import { soaks } from "../../src/core/rounds/loads.ts";
import type { RoundsOfDay } from "../../src/core/rounds/roundsOfDay.ts";
import { commonStep } from "../../src/core/stock/commonStep.ts";
import { stepsUsed } from "../../src/core/stock/stepsUsed.ts";
import { nodesOfDays } from "../../src/core/stock/usedOverDays.ts";
import type { UseInputs } from "../../src/core/stock/useInputs.ts";
import { useSetAside } from "../../src/core/stock/useSetAside.ts";
import { answerOf } from "../core/answerOf.ts";

/**
 * Use in so many rounds, at so many levels of births that it is counted in fewer steps, and use of which a part is
 * hardly any: beside the exact sum at the same levels, never less and never as much as 1 in 100 more.
 */
const none = { perDay: 0, perRound: 0, perLoad: [0], perKit: [0, 0], perDescale: 0 };
const MOST_MORE = 1.01;
const SIZE = 0.1;
const whole = {
	size: SIZE,
	of: (amount: number) => Math.round(amount / SIZE),
	more: 0,
	most: Number.POSITIVE_INFINITY,
};

const dayOf = (levelShape: number, each: number): RoundsOfDay => {
	const byKind = [0.6, 0.4].map((share) => [each * share, each * share, 2 * each * share]);
	const kits = [each, each, 2 * each];
	const level = { mean: 4 * each, levelShape, daySpread: 0 };
	const forecast =
		levelShape > 0 ? { forecast: { level, sure: byKind.map(() => [0, 0, 0.02]) } } : {};
	return { kind: "in_rounds", starts: [0, 60, 120], kits, byKind, ...forecast };
};
const weeks = (levelShape: number, each: number) =>
	new Array<RoundsOfDay>(11).fill(dayOf(levelShape, each));

const kits = { ...none, perKit: [97.3, 151.1] };
const alike = { ...none, perRound: 1300.7, perKit: [211.3, 211.3] };

describe("use that is counted in fewer steps is the exact sum, a little on the safe side", () => {
	test.each([
		["kits that differ, at a wide level", kits, weeks(3, 0.2), 0],
		["kits that differ, with rounds", { ...kits, perRound: 73.9 }, weeks(3, 0.2), 0],
		["kits that differ, with loads", { ...kits, perLoad: [73.9] }, weeks(3, 0.2), 0],
		["kits that differ, with descalings", { ...kits, perDescale: 211.3 }, weeks(3, 0.2), 3],
		["rounds and kits", alike, weeks(3, 0.2), 0],
		["rounds, loads and kits", { ...alike, perLoad: [170.3] }, weeks(3, 0.2), 0],
		["hardly any for a kit", { ...alike, perKit: [0.1, 0.1] }, weeks(3, 0.2), 0],
		["hardly any for a kit, births known", { ...alike, perKit: [0.1, 0.1] }, weeks(0, 1), 0],
		["hardly any for a round", { ...kits, perDay: 500, perRound: 0.1 }, weeks(3, 0.2), 0],
		["hardly any for a load", { ...kits, perDay: 500, perLoad: [0.1] }, weeks(3, 0.2), 0],
		["hardly any for a descaling", { ...kits, perDay: 500, perDescale: 0.3 }, weeks(3, 0.2), 3],
		["nearly all by the day", { ...kits, perDay: 90_000 }, weeks(3, 0.2), 0],
		["hardly ever any kit", { ...kits, perRound: 0.1 }, weeks(2, 0.004), 0],
	] as const)("%s", (_what, rates, days, descaleEvery) => {
		const inputs: UseInputs = { rates, days, loads: soaks(2), descaleEvery };
		expect(commonStep(inputs).more, "steps are shared").toBeGreaterThan(0);
		const exact = stepsUsed(inputs, whole, nodesOfDays(days));
		for (const confidence of [0.5, 0.8, 0.95, 0.999]) {
			const wanted = setAside(exact, confidence) * SIZE;
			const found = answerOf(useSetAside, { ...inputs, confidence });
			expect(found, `for ${confidence}`).toBeGreaterThanOrEqual(wanted - 1e-9);
			expect(found, `for ${confidence}`).toBeLessThanOrEqual(wanted * MOST_MORE + 1e-9);
			// Far more than is set aside, as a whole pack may be: as surely enough as 1 in 100 less or more of it.
			const amounts = useSetAside.mayCome?.({ ...inputs, confidence }) as Amounts;
			for (const amount of [1.4, 1.7, 2.5, 100].map((more) => more * found)) {
				const near = (part: number) => chanceAtMost(exact, Math.floor((amount * part) / SIZE));
				expect(chanceEnough(amounts, amount)).toBeGreaterThanOrEqual(near(0.99) - 0.01);
				expect(chanceEnough(amounts, amount)).toBeLessThanOrEqual(near(1.01) + 0.01);
			}
		}
	});
});
