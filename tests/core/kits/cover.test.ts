import { describe, expect, test } from "vitest";
import { kitCover, kitsNeeded } from "../../../src/core/kits/cover.ts";
import type { Reprocessing } from "../../../src/core/kits/reprocessing.ts";
import { unmetPer1000 } from "../../../src/core/kits/unmetPer1000.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf, refusalOf } from "../answerOf.ts";
import { equalRounds, oneByOne } from "./reprocessed.ts";

const inRounds = (perDay: number, days = 1, starts = [420, 840, 1260], turnaround = 110) =>
	equalRounds(new Array(days).fill(perDay), starts, turnaround);
const afterEachUse = oneByOne;

describe("unmet uses", () => {
	test.each([
		[1, 136.681, 5e-4],
		[2, 11.5022, 5e-5],
		[3, 0.734884, 5e-7],
		[4, 0.038467, 5e-7],
		[5, 0.00171635, 5e-9],
	])("0.6 a day, three rounds of 110 minutes, %d kits: %d of 1,000", (kits, unmet, tolerance) => {
		expectWithin(unmetPer1000(kits, inRounds(0.6)), unmet, tolerance, "per 1,000");
		expectWithin(
			unmetPer1000(kits, inRounds(0.6, 7)),
			unmet,
			tolerance,
			"per 1,000 in a week of such days",
		);
	});

	test.each([
		[1, 44.7989, 5e-5],
		[2, 1.0188, 5e-6],
		[3, 0.0155053, 5e-8],
	])("0.6 a day, after each use in 110 minutes, %d kits: %d of 1,000", (kits, unmet, tolerance) => {
		expectWithin(unmetPer1000(kits, afterEachUse([0.6])), unmet, tolerance, "per 1,000");
	});

	test.each([
		["in rounds", inRounds(0)],
		["after each use", afterEachUse([0, 0])],
	])("without uses none is unmet, %s", (_name, reprocessing) => {
		expect(unmetPer1000(1, reprocessing)).toBe(0);
	});

	test("days weigh by their uses", () => {
		// What a day leaves in work when it ends is still out of reach on the next.
		const mixed = unmetPer1000(1, afterEachUse([0.6, 0, 3]));
		const low = unmetPer1000(1, afterEachUse([0.6]));
		const high = unmetPer1000(1, afterEachUse([3]));
		const apart = (0.6 * low + 3 * high) / 3.6;
		expect(mixed).toBeLessThan(apart);
		// At most 110 minutes of the busiest day, of its 1,440, were those of a day with fewer.
		expectWithin(mixed, apart, (apart * 110) / 1440, "per 1,000");
	});

	test("no time to reprocess leaves only what comes between rounds", () => {
		expectWithin(unmetPer1000(1, afterEachUse([0.6], 0)), 0, 0, "per 1,000");
		expect(unmetPer1000(1, inRounds(0.6, 1, [420, 840, 1260], 0))).toBeGreaterThan(0);
	});
});

describe("kits needed", () => {
	const rules = { unmetAllowed: 1, deliveryBeds: 2, spareKits: 1 };
	const cover = (change: object, reprocessing: Reprocessing = inRounds(0.6)) =>
		answerOf(kitCover, { ...rules, reprocessing, ...change });

	test.each([
		["both ask for three, risk is named", {}, 3, "risk"],
		["two beds and no spare: risk", { spareKits: 0 }, 3, "risk"],
		["four beds: beds", { deliveryBeds: 4 }, 5, "beds"],
		["a smaller risk asks for more", { unmetAllowed: 0.03 }, 5, "risk"],
		[
			"a risk met exactly is met",
			{ unmetAllowed: unmetPer1000(3, inRounds(0.6)), spareKits: 0 },
			3,
			"risk",
		],
		["no beds, a large risk: one", { unmetAllowed: 500, deliveryBeds: 0, spareKits: 0 }, 1, "risk"],
	])("%s", (_name, change, kits, decidedBy) => {
		expect(cover(change)).toMatchObject({ kitsNeeded: kits, decidedBy });
	});

	test("after each use, 110 minutes: three kits", () => {
		expect(cover({}, afterEachUse([0.6])).byRisk).toBe(3);
	});

	/** Between the two the number is looked for: whatever the first, the next is not left out. */
	test.each([0.3, 1, 3, 12, 40])(
		"%d uses a day: the fewest with which the risk is kept",
		(uses) => {
			for (const life of [null, { days: 2, renewal: "when_expired" as const }]) {
				const reprocessing = { ...inRounds(uses), life };
				const { byRisk } = cover({ unmetAllowed: 0.2 }, reprocessing);
				expect(unmetPer1000(byRisk, reprocessing)).toBeLessThanOrEqual(0.2);
				for (let kits = Math.max(1, byRisk - 3); kits < byRisk; kits++)
					expect(unmetPer1000(kits, reprocessing)).toBeGreaterThan(0.2);
			}
		},
	);

	test("without uses the beds decide", () => {
		expect(cover({}, inRounds(0))).toMatchObject({ kitsNeeded: 3, byRisk: 1, decidedBy: "beds" });
	});

	test("more than five hundred kits means a wrong figure", () => {
		const reprocessing = afterEachUse([500], 3 * 1440);
		expect(refusalOf(kitCover, { ...rules, reprocessing }).map((p) => p.code)).toEqual([
			"too-many-kits",
		]);
	});

	test("rounds that cannot take what comes are refused, although kits would do for as many days as are gone through", () => {
		// Two rounds take six kits each; fourteen come.
		const length = { perRound: 30, perKit: 100, loads: [] };
		const reprocessing = { ...inRounds(14, 1, [420, 1140]), length };
		const often = { ...rules, unmetAllowed: 50, reprocessing };
		expect(refusalOf(kitCover, often).map((p) => p.code)).toEqual(["too-many-kits"]);
		expect(unmetPer1000(500, reprocessing)).toBeLessThan(often.unmetAllowed);
	});

	test("five hundred kits themselves are not", () => {
		expect(cover({}, afterEachUse([433], 1440)).byRisk).toBe(500);
		const reprocessing = afterEachUse([434], 1440);
		expect(refusalOf(kitCover, { ...rules, reprocessing }).map((p) => p.code)).toEqual([
			"too-many-kits",
		]);
	});

	test("the number needed is the cover's", () => {
		expect(answerOf(kitsNeeded, { cover: cover({}) })).toBe(3);
	});
});
