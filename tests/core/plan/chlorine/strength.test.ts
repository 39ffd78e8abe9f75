import { describe, expect, test } from "vitest";
import { strengthOfLiquid } from "../../../../src/core/chlorine/strengthOfLiquid.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { answerOf } from "../../answerOf.ts";
import { contentOf } from "../../contentOf.ts";
import { codesOf, numberIn, rowsOf, valueIn } from "../../planCells.ts";
import { smallUnit } from "../../smallUnit.ts";

const FILE = "strength.csv";
const chlorine = `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
	liquid,liquid,5,pct_w_v,,1.3,,yes
	powder,powder,70,pct_w_w,,,2,no
	tablets,tablet,1.5,g_per_tablet,,,,no`;
const LOTS = "item,lot,quantity,made_on,received_on,arrives_on,expires_on";
const READINGS = "item,lot,read_on,strength_pct,method,note";
const made = (lots: readonly string[], readings: readonly string[] = [], products = chlorine) =>
	plan(
		smallUnit({
			"chlorine.csv": products,
			"lots.csv": [LOTS, ...lots].join("\n"),
			"strength-readings.csv": [READINGS, ...readings].join("\n"),
		}),
	);
const fresh = "liquid,L1,10,2026-12-01,,,2027-07-10";

test("age, label, today and the last usable day of each lot", () => {
	const rows = contentOf(
		made([fresh, "powder,P1,500,2026-03-01,,,2028-12-01", "tablets,T1,9,2020-01-01,,,2028-12-31"]),
		FILE,
		"product",
		"lot",
		"age_days",
		"label_strength",
		"last_usable_day",
		"remark",
	);
	expect(rows).toEqual([
		["liquid", "L1", 90, 5, "2027-07-10", ""],
		["powder", "P1", 365, 70, "2028-12-01", ""],
		["tablets", "T1", 2616, 1.5, "2028-12-31", ""],
	]);
});

test("strength today is the liquid as it has faded, in per cent", () => {
	const gramsPerLitre = answerOf(strengthOfLiquid, {
		gramsPerLitre: 50,
		storeC: 25,
		days: 90,
		fadeFactor: 1.3,
	});
	expectWithin(
		numberIn(rowsOf(made([fresh]), FILE)[0], "strength_today"),
		gramsPerLitre / 10,
		1e-12,
		"%",
	);
});

describe("what to look out for", () => {
	test.each([
		["a lot with its made-on date", fresh, ""],
		[
			"no made-on date",
			"liquid,L1,10,,2027-01-01,,2027-07-10",
			"No made-on date: it is older than the received date says, and weaker than shown.",
		],
		[
			"neither date",
			"liquid,L1,10,,,,2027-07-10",
			"Neither made-on nor received date: its age is not known, and it counts as 180 days old.",
		],
		[
			"neither date of a powder",
			"powder,P1,10,,,,2028-07-10",
			"Neither made-on nor received date: its age is not known, and the label's strength is shown.",
		],
		["tablets without dates", "tablets,T1,10,,,,2027-07-10", ""],
		[
			"not here yet",
			"liquid,L1,10,2027-02-01,,2027-03-20,2027-07-10",
			"Not here yet: arrives 2027-03-20.",
		],
		["came before its day", "liquid,L1,10,2027-02-01,2027-02-27,2027-03-20,2027-07-10", ""],
		["arrives on the first day", "liquid,L1,10,2027-02-01,,2027-03-01,2027-07-10", ""],
		[
			"out of date",
			"liquid,L1,10,2026-12-01,,,2027-02-28",
			"Out of date, or too weak for the strength wanted: do not use it for the soak.",
		],
	])("%s", (_what, lot, remark) => {
		expect(contentOf(made([lot]), FILE, "remark")).toEqual([[remark]]);
	});

	// methods.md 2: a liquid of unknown age counts as the days that the unit assumes; no label's strength is shown here.
	test.each([
		["liquid,L1,10,,2027-01-01,,2027-07-10", "density-missing", /^No made-on date/],
		[
			"liquid,L1,10,,,,2027-07-10",
			"density-missing",
			/^Neither made-on .* it counts as 180 days old\.$/,
		],
		["powder,P1,10,,,,2028-07-10", "wrong-measure", /^$/],
	])("a lot whose label says nothing of its strength: %s", (lot, code, remark) => {
		// By weight, without the density that it takes; powder by volume.
		const unknown = chlorine
			.replace("liquid,liquid,5,pct_w_v", "liquid,liquid,5,pct_w_w")
			.replace(/(powder,powder,.*?,)pct_w_w/, "$1pct_w_v");
		const [row] = rowsOf(made([lot], [], unknown), FILE);
		expect(codesOf(row?.strength_today)).toEqual([code]);
		expect(valueIn(row?.remark)).toMatch(remark);
	});

	test("a lot without an end in sight, and one that is not usable", () => {
		const lots = ["tablets,T1,9,,,,", "tablets,T2,9,,,,2027-02-28"];
		expect(contentOf(made(lots), FILE, "last_usable_day").flat()).toEqual([
			"more than ten years",
			"not usable",
		]);
	});
});

describe("a reading", () => {
	// The lot holds 4.47 %; strips may be 48 % off, titration 12.4 %, colour comparison 19 %.
	test.each([
		["2.4", "strip", false],
		["2.3", "strip", true],
		["3.95", "titration", false],
		["3.9", "titration", true],
		["5.0", "titration", false],
		["5.1", "titration", true],
		["3.7", "colour_comparison", false],
		["3.6", "colour_comparison", true],
	])("of %s %% by %s: flagged %s", (pct, method, flagged) => {
		const [row] = contentOf(
			made([fresh], [`liquid,L1,2027-03-01,${pct},${method},`]),
			FILE,
			"measured_pct",
			"measured_on",
			"remark",
		);
		expect(row?.slice(0, 2)).toEqual([Number(pct), "2027-03-01"]);
		expect(/differs from the computed strength/.test(String(row?.[2]))).toBe(flagged);
	});

	test("flags, and never overrules: strength, last day and mix stay", () => {
		const [without, with_] = [made([fresh]), made([fresh], ["liquid,L1,2027-03-01,9,titration,"])];
		for (const [file, ...columns] of [
			[FILE, "strength_today", "last_usable_day"],
			["mixing.csv", "product_quantity", "strength_today_g_per_l"],
		] as const)
			expect(contentOf(with_, file, ...columns)).toEqual(contentOf(without, file, ...columns));
		const old = "liquid,L1,10,2026-12-01,,,2027-02-28";
		expect(
			contentOf(made([old], ["liquid,L1,2027-03-01,5,titration,"]), FILE, "last_usable_day"),
		).toEqual([["not usable"]]);
	});

	test("is held against the strength of its own day", () => {
		// Fresh in December at 5 %, 4.47 % in March.
		const remark = (day: string, pct: number) =>
			contentOf(made([fresh], [`liquid,L1,${day},${pct},titration,`]), FILE, "remark").flat();
		expect(remark("2026-12-01", 5.4)).toEqual([""]);
		expect(remark("2026-12-01", 4.3)).toEqual([expect.stringMatching(/differs/)]);
	});

	test("the latest of a lot counts, and only of that lot", () => {
		const readings = [
			"liquid,L1,2027-02-20,4.6,strip,",
			"liquid,L1,2027-02-10,4.4,strip,",
			"liquid,L2,2027-02-28,1,strip,",
			// Another product's lot may bear the same mark.
			"powder,L1,2027-02-28,60,strip,",
		];
		expect(contentOf(made([fresh], readings), FILE, "measured_pct")).toEqual([[4.6]]);
	});
});
