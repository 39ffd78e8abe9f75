import { describe, expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { columnOf } from "../contentOf.ts";
import { smallUnit } from "../smallUnit.ts";

const planWith = (form: string, strength: number, measure: string, confirmed = "") =>
	plan(
		smallUnit({
			"chlorine.csv": `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use,label_confirmed
				${form === "tablet" ? "tablets" : form},${form},${strength},${measure},1.2,0,0,yes,${confirmed}`,
		}),
	);
const asked = (made: ReturnType<typeof plan>) =>
	made.problems.filter(({ code }) => code === "unusual-strength");

// The slips: each is asked about before anything is measured out, with what was probably meant.
const slips = [
	["g/L typed as %", "liquid", 35, "pct_w_v", /35 g\/L would be 3\.5 %/],
	["g/L typed as % by weight", "liquid", 35, "pct_w_w", /35 g\/L would be 3\.5 %/],
	["degrees typed as %", "liquid", 48, "pct_w_v", /for 48 degrees choose “chlorometric degree”/],
	["g/L typed as degrees", "liquid", 120, "chlorometric_degree", /120 g\/L would be 12 %/],
	["mg/L typed as g/L", "liquid", 500, "g_per_l", /500 mg\/L would be 0\.5 g\/L/],
	["a share typed as %", "powder", 0.7, "pct_w_w", /0\.7 would be 70 %/],
	["mg typed as g", "tablet", 1670, "g_per_tablet", /1670 mg would be 1\.67 g/],
	["a tablet for drinking water", "tablet", 0.02, "g_per_tablet", /for drinking water/],
] as const;

describe("a label that no such product has", () => {
	test.each(slips)("%s: %s %d %s", (_what, form, strength, measure, words) => {
		const made = planWith(form, strength, measure);
		expect(asked(made)).toMatchObject([
			{ weight: "error", file: "chlorine.csv", line: 2, column: "strength" },
		]);
		expect(asked(made)[0]?.message).toMatch(words);
		expect(made.made).toBe(false);
		for (const file of ["mixing.csv", "mixing-days.csv", "wall-table.csv"])
			expect(columnOf(made, file, "product_quantity").every((q) => q === undefined)).toBe(true);
	});

	test.each(slips)("%s passes once the label is confirmed", (_what, form, strength, measure) => {
		const made = planWith(form, strength, measure, "yes");
		expect(asked(made)).toEqual([]);
		expect(columnOf(made, "mixing.csv", "product_quantity")[0]).toBeGreaterThan(0);
	});
});

// Strengths that are sold. Liquids: WHO 2014 (3.5 and 5 %), CDC 2014 (2.6 %), Cholera manual app. 14
// (15 %), INRS 2019 (9.6 %; 36 degrees); ends of the range from labels, from memory. Powder: MSF Essential
// drugs (65 to 70 %, lime 25 to 35 %), MSF catalogue (55 to 62 %). Tablets: MSF (1 g), Ministry table (1.5 g),
// IFRC 2022 (5 g); the least from memory.
test.each([
	["liquid", 0.5, "pct_w_v"],
	["liquid", 2.6, "pct_w_v"],
	["liquid", 3.5, "pct_w_v"],
	["liquid", 5.25, "pct_naocl_w_w"],
	["liquid", 9.6, "pct_w_w"],
	["liquid", 36, "chlorometric_degree"],
	["liquid", 48, "chlorometric_degree"],
	["liquid", 150, "g_per_l"],
	["liquid", 15, "pct_w_v"],
	["liquid", 16.5, "pct_w_v"],
	["liquid", 20, "pct_w_v"],
	["powder", 20, "pct_w_w"],
	["powder", 25, "pct_w_w"],
	["powder", 35, "pct_w_w"],
	["powder", 60, "pct_w_w"],
	["powder", 65, "pct_w_w"],
	["powder", 70, "pct_w_w"],
	["powder", 80, "pct_w_w"],
	["tablet", 0.1, "g_per_tablet"],
	["tablet", 0.4, "g_per_tablet"],
	["tablet", 1, "g_per_tablet"],
	["tablet", 1.5, "g_per_tablet"],
	["tablet", 5, "g_per_tablet"],
	["tablet", 10, "g_per_tablet"],
] as const)("a %s of %d %s is not asked about", (form, strength, measure) => {
	expect(asked(planWith(form, strength, measure))).toEqual([]);
});

test.each([
	["liquid", 20.1, "pct_w_v"],
	["powder", 19.9, "pct_w_w"],
	["powder", 80.1, "pct_w_w"],
	["tablet", 0.09, "g_per_tablet"],
	["tablet", 10.1, "g_per_tablet"],
] as const)("a %s of %d %s is just outside", (form, strength, measure) => {
	expect(asked(planWith(form, strength, measure))).toHaveLength(1);
});

test("the label is judged, not what is left after fading", () => {
	const faded = plan(
		smallUnit({
			"chlorine.csv": `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
				powder,powder,21,pct_w_w,,0,30,yes`,
			"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
				powder,P1,500,2026-12-01,,,2028-12-01`,
		}),
	);
	expect(asked(faded)).toEqual([]);
	expect(columnOf(faded, "mixing.csv", "product_quantity")[0]).toBeGreaterThan(0);
});
