import { qgamma } from "lib-r-math.js";
import { describe, test } from "vitest";
import { setAside } from "../../src/core/counts/counts.ts";
import { mixedOver } from "../../src/core/counts/mixedOver.ts";
import { atLevel } from "../../src/core/rounds/atLevel.ts";
import { soaks } from "../../src/core/rounds/loads.ts";
import type { RoundsOfDay } from "../../src/core/rounds/roundsOfDay.ts";
import { stepsUsed } from "../../src/core/stock/stepsUsed.ts";
import { useSetAside } from "../../src/core/stock/useSetAside.ts";
import { answerOf } from "../core/answerOf.ts";
import { expectWithin } from "../expectWithin.ts";

const WHOLE = { size: 1, of: (amount: number) => amount, more: 0, most: Number.POSITIVE_INFINITY };

/** The level at 200 equally likely values, each the middle one of its two-hundredth. */
const midpoints = (shape: number) =>
	Array.from({ length: 200 }, (_, i) => ({
		factor: Number(qgamma((i + 0.5) / 200, shape, shape)),
		weight: 1 / 200,
	}));

// So wide a level as of the first is not met by 200 of its values either.
describe.each([
	[0.3, 10, 0.025],
	[0.5, 4, 0.01],
	[1, 6, 0.01],
	[4, 30, 0.01],
])("a week with descalings at a level of shape %d, %d kits a round", (shape, kits, within) => {
	const level = { mean: 3 * kits, levelShape: shape, daySpread: 0 };
	const day: RoundsOfDay = {
		kind: "in_rounds",
		starts: [0, 60, 120],
		kits: [kits, kits, kits],
		byKind: [[kits, kits, kits]],
		forecast: { level, sure: [[0, 0, 0]] },
	};
	const days = new Array<RoundsOfDay>(7).fill(day);

	test.each([
		[{ perRound: 1, perKit: [1], perDescale: 20 }, 5],
		[{ perRound: 0, perKit: [3], perDescale: 100 }, 7],
		[{ perRound: 6, perKit: [0], perDescale: 2 }, 3],
	])("%j, every %d rounds: near the exact sum", (some, descaleEvery) => {
		const rates = { perDay: 0, perLoad: [0], ...some };
		const use = { rates, loads: soaks(3), descaleEvery };
		const exact = mixedOver(midpoints(shape), (factor) =>
			stepsUsed({ ...use, days: days.map((each) => atLevel(each, factor)) }, WHOLE),
		);
		for (const confidence of [0.8, 0.9, 0.95, 0.98]) {
			const wanted = setAside(exact, confidence);
			const found = answerOf(useSetAside, { ...use, days, confidence });
			expectWithin(found, wanted, Math.max(2, within * wanted), `at ${confidence}`);
		}
	});
});
