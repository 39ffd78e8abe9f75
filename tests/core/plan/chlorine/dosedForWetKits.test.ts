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

	test.each(["in_rounds", "after_each_use"])(
		"a soak that holds more kits than there are is dosed for those there are, also out of service (%s)",
		(reprocessing) => {
			const mix = mixOf({ soak_capacity_kits: 50, soak_container_litres: 400, reprocessing });
			// Four kits, one of them with a torn mask: 5.5 × 5.12 ÷ 35 = 0.80457 L.
			expect(mix.quantity).toBe(805);
			expect(mix.remark).toBe("");
		},
	);

	test("a jug too coarse for what is wanted is said: a fifth over the soak's own strength", () => {
		expect(mixOf({ measure_step_ml: 990 }).remark).toMatch(/^More than 20 % over 0.5 %/);
	});

	// calculations.md 5: after k kits the bath has C·V/(V + k·v/1000), and is dosed so that it ends at the target.
	test.each(["in_rounds", "after_each_use"])(
		"made once a day it is still at its strength after all kits that the day is planned for (%s)",
		(reprocessing) => {
			const kits = Array.from({ length: 10 }, (_, i) => `K${i},bag set,in_service,,`);
			const made = plan(
				unitWith(
					{
						reprocessing,
						solution_made: "each_day",
						kits_used_per_100_births: 100,
						plan_days: 1,
						carry_in_ml_per_kit: 100,
						measure_step_ml: 1,
					},
					{ "kits.csv": ["kit,kind,status,ready_since,note", ...kits].join("\n") },
				),
			);
			const ofDay = numberIn(
				rowsOf(made, "day-plan.csv")[0],
				"kits_to_reprocess_set_aside",
			) as number;
			const [mix] = rowsOf(made, "mixing.csv");
			const strength = numberIn(mix, "strength_made_pct") as number;
			const after = (strength * 5) / (5 + ofDay * 0.1);
			expect(ofDay).toBeGreaterThan(6);
			expect(after).toBeGreaterThanOrEqual(0.5);
			expect(numberIn(mix, "strength_after_carry_in_pct")).toBeGreaterThanOrEqual(0.5);
			// One kit more or less is 0.01 %.
			expectWithin(after, 0.5, 0.012, "%");
		},
	);

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
