import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { columnOf } from "../../contentOf.ts";
import { unitWith } from "../../smallUnit.ts";

// One preparation of the small unit: 5.5 L of 0.5 % from 3.5 %: 785.7 mL, rounded up to 790 mL = 0.79 L.
const planOf = (lots: string[], settings: Record<string, number> = {}) =>
	plan(
		unitWith(settings, {
			"lots.csv": ["item,lot,quantity,made_on,received_on,arrives_on,expires_on", ...lots].join(
				"\n",
			),
		}),
	);
const remarks = (made: ReturnType<typeof plan>) =>
	columnOf(made, "mixing.csv", "remark") as string[];
const advised = (made: ReturnType<typeof plan>) =>
	made.problems.filter(({ code }) => code === "lot-in-use");

describe("a lot smaller than what is to be measured", () => {
	test("is said on the mixing sheet and on the plan, with the lot to use instead", () => {
		const made = planOf([
			"liquid,A,0.78,2027-01-01,,,2027-05-01",
			"liquid,B,10,2027-01-01,,,2027-06-01",
		]);
		expect(remarks(made)[0]).toMatch(
			/^Too little for one preparation: 780 mL left, 790 mL needed\. Use lot B/,
		);
		expect(remarks(made)[1]).not.toMatch(/Too little/);
		expect(advised(made)).toMatchObject([{ weight: "advice", file: "lots.csv", line: 2 }]);
		expect(made.made).toBe(true);
	});

	test("without another, says to order", () => {
		const made = planOf(["liquid,A,0.5,2027-01-01,,,"]);
		expect(remarks(made)[0]).toMatch(/500 mL left, 790 mL needed\. Order now/);
	});

	test.each([
		["just enough", "liquid,A,0.79,2027-01-01,,,"],
		["more", "liquid,A,10,2027-01-01,,,"],
	])("is not said of %s", (_what, lot) => {
		const made = planOf([lot]);
		expect(remarks(made)[0]).not.toMatch(/Too little/);
		expect(advised(made)).toEqual([]);
	});

	test("is counted in tablets and grams as well", () => {
		// 27.5 g of chlorine: 19 tablets of 1.5 g, 40 g of 70 %.
		const made = planOf(["tablets,T,1,,,,", "powder,P,39,,,,", "liquid,L,10,2027-01-01,,,"]);
		const found = remarks(made).filter((remark) => remark.startsWith("Too little"));
		expect(found).toHaveLength(2);
		expect(found[0]).toMatch(/39 g left, 40 g needed/);
		expect(found[1]).toMatch(/1 tablet left, 19 tablets needed/);
	});
});

describe("a liquid of unknown age", () => {
	test("is said to be so on the mixing sheet and on the plan, with the days assumed", () => {
		const made = planOf(["liquid,A,10,,,,"]);
		expect(remarks(made)[0]).toMatch(/^Its age is not known: it counts as 180 days old/);
		expect(advised(made)[0]?.message).toMatch(/180 days old/);
		expect(remarks(planOf(["liquid,A,10,,,,"], { assumed_age_days: 90 }))[0]).toMatch(/90 days/);
	});

	test.each([
		["a made-on day", "liquid,A,10,2027-01-01,,,"],
		["a received day", "liquid,A,10,,2027-01-01,,"],
	])("is not one with %s", (_what, lot) => {
		expect(remarks(planOf([lot]))[0]).not.toMatch(/age is not known/);
	});

	test("counts in the dose: the assumed age is the setting's figure, and its source an estimate", () => {
		const made = planOf(["liquid,A,10,,,,"]);
		const strength = made.tables["mixing.csv"]?.rows[0]?.strength_today_g_per_l;
		expect(JSON.stringify(strength?.origin)).toContain("A liquid of unknown age counts as");
	});
});
