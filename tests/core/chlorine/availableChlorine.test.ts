import { describe, expect, test } from "vitest";
import { availableChlorine, type Label } from "../../../src/core/chlorine/availableChlorine.ts";
import { strengthMeasures } from "../../../src/core/chlorine/strengthMeasures.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf, refusalOf } from "../answerOf.ts";

const label = (
	form: Label["form"],
	strength: number,
	measure: Label["measure"],
	density: number | null = null,
): Label => ({ form, strength, measure, density });

describe("a liquid", () => {
	test.each([
		["pct_w_v", 3.5, null, 35],
		["pct_w_w", 5, 1.1, 55],
		["pct_naocl_w_v", 5.25, null, 50.0062],
		["pct_naocl_w_v", 5.25, 1.08, 50.0062],
		["pct_naocl_w_w", 5.25, 1.08, 54.0067],
		["mg_per_l", 35_000, null, 35],
		["g_per_l", 35, null, 35],
		["chlorometric_degree", 12, null, 38.04],
	] as const)("%s of %d, density %s, holds %d g/L", (measure, strength, density, gramsPerLitre) => {
		const found = answerOf(availableChlorine, label("liquid", strength, measure, density));
		expect(found.form).toBe("liquid");
		if (found.form === "liquid") expectWithin(found.gramsPerLitre, gramsPerLitre, 1e-3, "g/L");
	});

	test("a density does not change a strength by volume", () => {
		expect(answerOf(availableChlorine, label("liquid", 5, "pct_w_v", 1.2))).toEqual({
			form: "liquid",
			gramsPerLitre: 50,
		});
	});

	test.each(["pct_w_w", "pct_naocl_w_w"] as const)("%s without a density is refused", (measure) => {
		expect(refusalOf(availableChlorine, label("liquid", 5, measure)).map((p) => p.code)).toEqual([
			"density-missing",
		]);
	});
});

describe("a powder", () => {
	test.each([
		["pct_w_w", 70, 0.7],
		["pct_naocl_w_w", 70, 0.66675],
		["pct_w_w", 100, 1],
	] as const)("%s of %d holds %d g/g", (measure, strength, gramsPerGram) => {
		const found = answerOf(availableChlorine, label("powder", strength, measure));
		expect(found.form).toBe("powder");
		if (found.form === "powder") expectWithin(found.gramsPerGram, gramsPerGram, 1e-5, "g/g");
	});
});

test("a tablet holds what its label says", () => {
	expect(answerOf(availableChlorine, label("tablet", 1.5, "g_per_tablet"))).toEqual({
		form: "tablet",
		gramsPerTablet: 1.5,
	});
});

describe("measures that do not go with the form", () => {
	const right = {
		liquid: [
			"pct_w_v",
			"pct_w_w",
			"pct_naocl_w_v",
			"pct_naocl_w_w",
			"mg_per_l",
			"g_per_l",
			"chlorometric_degree",
		],
		powder: ["pct_w_w", "pct_naocl_w_w"],
		tablet: ["g_per_tablet"],
	};
	const wrong = (Object.keys(right) as Label["form"][]).flatMap((form) =>
		strengthMeasures
			.filter((measure) => !right[form].includes(measure))
			.map((measure) => [form, measure] as const),
	);
	test("there are fourteen", () => {
		expect(wrong).toHaveLength(14);
	});
	test.each(wrong)("a %s in %s is refused", (form, measure) => {
		// What its label says most often is named instead.
		const allowed = { liquid: "pct_w_v", powder: "pct_w_w", tablet: "g_per_tablet" }[form];
		const said = refusalOf(availableChlorine, label(form, 1, measure, 1));
		expect(said.map((p) => [p.code, p.received, p.allowed])).toEqual([
			["wrong-measure", measure, allowed],
		]);
	});
});

test.each([
	[label("liquid", 5000, "pct_w_v")],
	[label("liquid", 100.1, "pct_w_v")],
	[label("liquid", 1_000_001, "mg_per_l")],
	[label("liquid", 90, "pct_w_w", 1.6)],
	[label("powder", 101, "pct_w_w")],
	[label("powder", 5000, "pct_w_w")],
])("more chlorine than the product weighs is refused: %o", (tooMuch) => {
	expect(refusalOf(availableChlorine, tooMuch)).toMatchObject([
		{ code: "too-strong", received: `${tooMuch.strength} ${tooMuch.measure}` },
	]);
});

test("a liquid at exactly a kilogram a litre is the limit", () => {
	expect(answerOf(availableChlorine, label("liquid", 100, "pct_w_v"))).toEqual({
		form: "liquid",
		gramsPerLitre: 1000,
	});
});
