import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { numberIn, rowsOf, valueIn } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

const mixOf = (settings: Record<string, string | number>) => {
	const made = plan(unitWith({ measure_step_ml: 1, carry_in_ml_per_kit: 30, ...settings }));
	const [row] = rowsOf(made, "mixing.csv");
	return {
		quantity: numberIn(row, "product_quantity"),
		after: numberIn(row, "strength_after_carry_in_pct"),
		remark: valueIn(row?.remark),
		advice: made.problems.filter(({ code }) => code === "not-dosed-for-wet-kits"),
	};
};

describe("the product is dosed for wet kits", () => {
	test.each([
		// 5 L soak + 0.5 L to wipe with, of 3.5 %: 5.5 × 5.09 ÷ 35 = 0.79986 L.
		["one load of 3 kits", {}, 800],
		// A kit at every birth: 18 a day, 5.25 of them over the night before a round, and never more than the 3 there are.
		["never more kits than there are", { kits_used_per_100_births: 100 }, 800],
		// One kit in a soak, up to 2 in the fullest round, all through the one bath: 5.5 × 5.06 ÷ 35 = 0.79514 L.
		["a round of more loads than one", { soak_capacity_kits: 1 }, 796],
		["no water carried in", { carry_in_ml_per_kit: 0 }, 786],
	])("%s", (_what, settings, quantity) => {
		const mix = mixOf(settings);
		expect(mix.quantity).toBe(quantity);
		expect(mix.after).toBeGreaterThanOrEqual(0.5);
		expectWithin(mix.after as number, 0.5, 0.001, "%");
		expect([mix.remark, mix.advice]).toEqual(["", []]);
	});

	test("not where the unit says no: it is mixed as before, and one advice names the setting", () => {
		const mix = mixOf({ dose_for_wet_kits: "no" });
		expect(mix.quantity).toBe(786);
		expect(mix.after).toBeLessThan(0.5);
		expect(mix.remark).toMatch(/^Under 0.5 % after 3 wet kits/);
		expect(mix.advice).toMatchObject([
			{ weight: "advice", file: "unit.csv", column: "dose_for_wet_kits", allowed: "yes" },
		]);
		expect(mixOf({ dose_for_wet_kits: "no", carry_in_ml_per_kit: 0 }).advice).toEqual([]);
	});
});
