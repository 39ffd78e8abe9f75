import { describe, expect, test } from "vitest";
import type { Reprocessing } from "../../../src/core/kits/reprocessing.ts";
import { leastUnmetPer1000, unmetPer1000 } from "../../../src/core/kits/unmetPer1000.ts";
import { usesAtLevels } from "../../../src/core/kits/usesAtLevels.ts";
import { expectWithin } from "../../expectWithin.ts";
import { equalRounds, oneByOne } from "./reprocessed.ts";

const forecast = { shape: 3, sure: [0, 0] };
const rounds = equalRounds([1, 2], [420, 840, 1260], 110);
const inRounds: Reprocessing = { ...rounds, forecast };
const gone: Reprocessing = { ...inRounds, life: { days: 0, renewal: "when_expired" } };
const oneAfterTheOther: Reprocessing = { ...oneByOne([1, 2]), forecast };

test.each([
	["in rounds", inRounds],
	["in rounds, with kits that go out of date", gone],
	["one by one", oneAfterTheOther],
])("%s: each level with its share of the uses", (_what, reprocessing) => {
	for (const kits of [1, 3, 8, 20]) {
		const alone = usesAtLevels(reprocessing).map(({ at, share }) => share * unmetPer1000(kits, at));
		const all = alone.reduce((sum, unmet) => sum + unmet, 0);
		expectWithin(unmetPer1000(kits, reprocessing), all, 1e-12 * all, "of 1,000");
	}
});

describe("what is more than enough to know", () => {
	test.each([unmetPer1000, leastUnmetPer1000])("%o", (unmet) => {
		const whole = unmet(3, gone);
		const some = unmet(3, gone, whole / 10);
		expect(some).toBeGreaterThan(whole / 10);
		expect(some).toBeLessThan(whole);
		expect(unmet(3, gone, whole)).toBe(whole);
	});
});

test("kits that go out of date are left out of the least, and only there", () => {
	expect(leastUnmetPer1000(3, gone)).toBe(unmetPer1000(3, inRounds));
	expect(unmetPer1000(3, gone)).toBeGreaterThan(2 * unmetPer1000(3, inRounds));
});
