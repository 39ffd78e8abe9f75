import { describe, expect, test } from "vitest";
import type { Strength } from "../../../src/core/chlorine/availableChlorine.ts";
import { dosingFor } from "../../../src/core/plan/chlorine/dosing.ts";
import {
	lotsWithStrength,
	preparationOn,
	strongLots,
} from "../../../src/core/plan/chlorine/lotPreparation.ts";
import { productFigures } from "../../../src/core/plan/chlorine/productFigures.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import { readWorkbook } from "../../../src/core/read/readWorkbook.ts";
import { expectWithin } from "../../expectWithin.ts";
import { contentOf } from "../contentOf.ts";
import { codesOf, problemCodes, valueIn } from "../planCells.ts";
import { smallUnit, unitWith } from "../smallUnit.ts";

const DAY = "2027-03-01";
const chlorine = (
	liquid: string,
) => `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
	liquid,${liquid},,yes`;
const fading = { "chlorine.csv": chlorine("liquid,12,pct_w_v,,1.3") };
const store = (...lots: string[]) => ({
	"lots.csv": ["item,lot,quantity,made_on,received_on,arrives_on,expires_on", ...lots].join("\n"),
});
const lotsOf = (
	changes: Record<string, string>,
	day = DAY,
	settings: Record<string, number> = {},
) => {
	const read = readWorkbook(unitWith(settings, changes));
	const dosing = dosingFor(read);
	const [product] = productFigures(read);
	if (!product) throw new Error("there should be a product");
	const named = (lots: ReturnType<typeof strongLots>) => lots.map(({ lot }) => lot?.value.lot);
	return {
		strong: named(strongLots(dosing, product, day)),
		all: named(lotsWithStrength(dosing, product, day)),
		used: preparationOn(dosing, product, day),
	};
};

describe("the lot to use first", () => {
	test.each([
		["the first to expire", ["liquid,B,1,,,,2027-06-01", "liquid,A,1,,,,2027-05-01"], ["A", "B"]],
		[
			"one that expires before one that does not",
			["liquid,B,1,,,,", "liquid,A,1,,,,2029-01-01"],
			["A", "B"],
		],
		["not one that is used up", ["liquid,A,0,,,,2027-05-01", "liquid,B,1,,,,"], ["B"]],
		["not one that is out of date", ["liquid,A,1,,,,2027-02-28", "liquid,B,1,,,,"], ["B"]],
		["one on its last day", ["liquid,A,1,,,,2027-03-01"], ["A"]],
		[
			"not one that arrives tomorrow",
			["liquid,A,1,,,2027-03-02,2027-05-01", "liquid,B,1,,,,"],
			["B"],
		],
		["one that arrives today", ["liquid,A,1,,,2027-03-01,2027-05-01"], ["A"]],
		["not another item's", ["powder,A,1,,,,2027-05-01"], []],
	])("is %s", (_what, lots, expected) => {
		expect(lotsOf(store(...lots)).strong).toEqual(expected);
		expect(lotsOf(store(...lots)).used.lot?.value.lot).toBe(expected[0]);
	});

	test("without a lot the label's strength is prepared from, and it is said", () => {
		const { used } = lotsOf(store());
		expect(used.lot).toBeUndefined();
		expect(valueIn(used.strength)).toEqual({ form: "liquid", gramsPerLitre: 35 });
		const made = plan(smallUnit(store("liquid,A,1,,,,2027-02-28")));
		expect(made.made).toBe(true);
		expect(problemCodes(made, "advice")).toContain("no-usable-lot");
	});
});

describe("a lot that has faded below the strength wanted", () => {
	// 12 % in a store of 40 °C holds less than 0.5 % after two years, and more than 4 % after a month.
	const hot = { store_c: 40, target_strength_pct: 4 };
	const lots = store(
		"liquid,OLD,1,2025-03-01,,,2027-04-01",
		"liquid,NEW,1,2027-02-01,,,2027-12-01",
	);

	test("is not offered, though it would expire first", () => {
		const { strong, all, used } = lotsOf({ ...fading, ...lots }, DAY, hot);
		expect(all).toEqual(["OLD", "NEW"]);
		expect(strong).toEqual(["NEW"]);
		expect(used.lot?.value.lot).toBe("NEW");
		const made = plan(unitWith(hot, { ...fading, ...lots }));
		for (const file of ["mixing.csv", "wall-table.csv", "mixing-days.csv"])
			expect(new Set(contentOf(made, file, "lot").flat())).toEqual(new Set(["NEW"]));
	});

	test("alone in the store leaves the plan unmade, and says why", () => {
		const made = plan(
			unitWith(hot, { ...fading, ...store("liquid,OLD,1,2025-03-01,,,2027-04-01") }),
		);
		expect(made.made).toBe(false);
		expect(new Set(problemCodes(made, "error"))).toEqual(new Set(["too-weak"]));
	});

	test("is offered again where a weaker soak is wanted", () => {
		expect(
			lotsOf({ ...fading, ...lots }, DAY, { ...hot, target_strength_pct: 0.2 }).strong,
		).toEqual(["OLD", "NEW"]);
	});
});

describe("the day from which a lot fades", () => {
	const strengthOf = (lot: string, product = "liquid,12,pct_w_v,,1.3") =>
		valueIn(lotsOf({ "chlorine.csv": chlorine(product), ...store(lot) }).used.strength);

	test("is the day it was made; where that is not known, the day it was received", () => {
		const made = strengthOf("liquid,A,1,2026-12-01,2027-01-15,,");
		expect(strengthOf("liquid,A,1,2026-12-01,,,")).toEqual(made);
		expect(strengthOf("liquid,A,1,,2026-12-01,,")).toEqual(made);
		expect(strengthOf("liquid,A,1,,2027-01-15,,")).not.toEqual(made);
	});

	// methods.md 2 (assumed_age_days), calculations.md 5 (liquid stock fades).
	test("is not known of a liquid without either: it counts as 180 days old on the first day, and fades on from it", () => {
		// 2026-09-02 is 180 days before 2027-03-01.
		const old = strengthOf("liquid,A,1,2026-09-02,,,");
		expect(strengthOf("liquid,A,1,,,,")).toEqual(old);
		const on = (day: string, lot: string) =>
			valueIn(lotsOf({ ...fading, ...store(lot) }, day).used.strength);
		for (const day of ["2027-03-07", "2028-02-29"] as const)
			expect(on(day, "liquid,A,1,,,,")).toEqual(on(day, "liquid,A,1,2026-09-02,,,"));
		// Before the plan it is not taken to be younger.
		expect(on("2027-02-01", "liquid,A,1,,,,")).toEqual(old);
		// One on its way counts as 180 days old when it comes: 2026-09-22 is 180 days before it.
		expect(on("2027-04-20", "liquid,A,1,,,2027-03-21,")).toEqual(
			on("2027-04-20", "liquid,A,1,2026-09-22,,,"),
		);
		expect(strengthOf("liquid,A,1,,,,", "powder,70,pct_w_w,,")).toEqual({
			form: "powder",
			gramsPerGram: 0.7,
		});
	});

	test("is as many days back as the unit assumes", () => {
		const unit = { ...fading, ...store("liquid,A,1,,,,") };
		const fresh = lotsOf(unit, DAY, { assumed_age_days: 0 }).used;
		expect(valueIn(fresh.strength)).toEqual({ form: "liquid", gramsPerLitre: 120 });
	});

	test("cannot lie ahead of a lot that is in the store: nothing is measured out from it", () => {
		expect(strengthOf("liquid,A,1,2027-04-01,,,")).toBeUndefined();
		const made = plan(smallUnit(store("liquid,A,1,2027-04-01,,,")));
		expect(made.made).toBe(false);
	});

	test("counts for a powder, and for tablets not at all", () => {
		const powder = strengthOf("liquid,A,1,2026-03-01,,,", "powder,70,pct_w_w,,") as Strength;
		const holds = powder.form === "powder" ? powder.gramsPerGram : undefined;
		expectWithin(holds, 0.7 - (0.02 * 365) / 365.25, 1e-12, "g/g");
		for (const day of [DAY, "2036-03-01"])
			expect(
				valueIn(
					lotsOf(
						{
							"chlorine.csv": chlorine("tablet,1.5,g_per_tablet,,"),
							...store("liquid,A,1,2026-03-01,,,"),
						},
						day,
					).used.strength,
				),
			).toEqual({ form: "tablet", gramsPerTablet: 1.5 });
	});
});

test("a factor nobody can read leaves the lot without a strength", () => {
	const { used } = lotsOf({ ...fading, ...store("liquid,A,1,2026-12-01,,,") }, DAY);
	expect(codesOf(used.preparation)).toEqual([]);
	const made = plan(smallUnit({ "chlorine.csv": chlorine("liquid,12,pct_w_v,,fast") }));
	expect([made.made, problemCodes(made, "error")]).toEqual([false, ["bad-cell"]]);
});
