import { expect, test } from "vitest";
import type { Figure } from "../../../../src/core/calculation.ts";
import type { Strength } from "../../../../src/core/chlorine/availableChlorine.ts";
import { valueIn } from "../../../../src/core/outcome.ts";
import { storeLots } from "../../../../src/core/plan/chlorine/storeLots.ts";
import { unitWith } from "../../smallUnit.ts";

/** The first amount to measure out of a lot: how much, in what. */
function firstOf(product: string, lot: string): string {
	const [first] = storeLots(unitWith({}))?.sizesOf(product, lot) ?? [];
	return first ? `${first.quantity} ${first.measure} for ${first.litres} L` : "none";
}

test("what a lot takes for each size of container, else what the label says", () => {
	const [smallest, ...others] = storeLots(unitWith({}))?.sizesOf("liquid", "L1") ?? [];
	expect(others.length).toBeGreaterThan(2);
	expect(others.every(({ litres }) => litres > (smallest?.litres as number))).toBe(true);
	// Neither fades.
	expect(firstOf("liquid", "L9")).toBe(firstOf("liquid", "L1"));
	expect(firstOf("powder", "L1")).toBe(firstOf("powder", "P1"));
	expect(firstOf("powder", "P1")).not.toBe(firstOf("liquid", "L1"));
	expect(firstOf("bleach", "L1")).toBe("none");
});

test("a lot that lost strength takes more than its label says, and more than a younger one", () => {
	const fading = `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
		liquid,liquid,3.5,pct_w_v,,2,,yes`;
	const lots = `item,lot,quantity,made_on,received_on,arrives_on,expires_on
		liquid,L1,10,2026-09-10,,,
		liquid,L2,10,2027-02-10,,,`;
	const store = storeLots(unitWith({ store_c: 30 }, { "chlorine.csv": fading, "lots.csv": lots }));
	const [old, young, label] = ["L1", "L2", ""].map(
		(lot) => store?.sizesOf("liquid", lot).at(-1)?.quantity as number,
	) as [number, number, number];
	expect(old).toBeGreaterThan(young);
	expect(young).toBeGreaterThan(label);
});

// methods.md 2, calculations.md: a liquid of unknown age is as old as the unit assumes when it comes, and ages from then on.
test("a lot of unknown age that is still to come does not grow older before it comes", () => {
	const store = storeLots(
		unitWith(
			{ assumed_age_days: 60 },
			{
				"chlorine.csv":
					"product,form,strength,strength_measure,fade_factor,in_use\nliquid,liquid,5,pct_w_v,2,yes",
				"lots.csv": "item,lot,quantity,arrives_on\nliquid,here,5,\nliquid,comes,5,2027-03-20",
			},
		),
	);
	const on = (lot: number, day: string) => {
		const strength = valueIn(store?.lots[lot]?.strengthOn(day) as Figure<Strength>);
		return strength?.form === "liquid" ? strength.gramsPerLitre : undefined;
	};
	expect(on(1, "2027-03-20")).toBe(on(0, "2027-03-01"));
	expect(on(1, "2027-03-30")).toBe(on(0, "2027-03-11"));
	expect(on(0, "2027-03-11")).toBeLessThan(on(0, "2027-03-01") as number);
});

test("without a first day or a strength nothing is known of the lots", () => {
	expect(storeLots(unitWith({ plan_start: "" }))).toBeUndefined();
	expect(storeLots(unitWith({ target_strength_pct: "strong" }))).toBeUndefined();
});
