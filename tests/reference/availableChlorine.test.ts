import {
	availableChlorine,
	CHLORINE_PER_HYPOCHLORITE,
	type Label,
} from "../../src/core/chlorine/availableChlorine.ts";
import { strengthAfterCarryIn } from "../../src/core/chlorine/strengthAfterCarryIn.ts";
import { answerOf } from "../core/answerOf.ts";
import * as from from "./publications.ts";
import { checkCases, printed, type ReferenceCase } from "./referenceCase.ts";

type Liquid = Pick<Label, "strength" | "measure"> & { density?: number };

const onePercent = printed(from.choleraManual, "Appendix 14: 1 % is 10 g/L, 10,000 mg/L");
const degrees = (place: string) => printed(from.stockSolution, place);
const weights = printed(from.atomicWeights, "Cl2 70.906 over NaOCl 74.442", "derived");
const strengths: ReferenceCase<Liquid>[] = [
	{
		id: "1 %",
		inputs: { strength: 1, measure: "pct_w_v" },
		expected: 10,
		tolerance: 0,
		unit: "g/L",
		why: "definition",
		source: onePercent,
	},
	{
		id: "10,000 ppm",
		inputs: { strength: 10_000, measure: "mg_per_l" },
		expected: 10,
		tolerance: 0,
		unit: "g/L",
		why: "definition",
		source: onePercent,
	},
	{
		id: "1 ppm",
		inputs: { strength: 1, measure: "mg_per_l" },
		expected: 0.001,
		tolerance: 0,
		unit: "g/L",
		why: "definition",
		source: onePercent,
	},
	{
		id: "0.5 %",
		inputs: { strength: 0.5, measure: "pct_w_v" },
		expected: 5,
		tolerance: 0,
		unit: "g/L",
		why: "5,000 mg/L",
		source: printed("Iqbal et al., PLoS ONE 2016;11(5):e0156136", "abstract"),
	},
	{
		id: "0.05 %",
		inputs: { strength: 0.05, measure: "pct_w_v" },
		expected: 0.5,
		tolerance: 1e-12,
		unit: "g/L",
		why: "500 mg/L, but for the rounding of a product",
		source: printed("Iqbal et al., PLoS ONE 2016;11(5):e0156136", "abstract"),
	},
	{
		id: "1 degree",
		inputs: { strength: 1, measure: "chlorometric_degree" },
		expected: 3.17,
		tolerance: 0.01,
		unit: "g/L",
		why: "printed to two decimals",
		source: printed(from.chlorometric, "a litre of chlorine weighs 3.17 g"),
	},
	{
		id: "1 degree in moles",
		inputs: { strength: 1, measure: "chlorometric_degree" },
		expected: 3.165,
		tolerance: 0.01,
		unit: "g/L",
		why: "44.64 mmol/L × 70.905; the density of the gas differs in the third decimal",
		source: printed("Joffin, Hypochlorites et eaux de Javel, 2002", "44.64 mmol/L", "derived"),
	},
	{
		id: "9 degrees",
		inputs: { strength: 9, measure: "chlorometric_degree" },
		expected: 28.5,
		tolerance: 0.1,
		unit: "g/L",
		why: "printed to one decimal",
		source: degrees("9° = 28.5 g/L"),
	},
	{
		id: "12 degrees",
		inputs: { strength: 12, measure: "chlorometric_degree" },
		expected: 38,
		tolerance: 0.1,
		unit: "g/L",
		why: "printed to whole grams",
		source: degrees("12° = 38 g/L"),
	},
	{
		id: "36 degrees",
		inputs: { strength: 36, measure: "chlorometric_degree" },
		expected: 114,
		tolerance: 0.2,
		unit: "g/L",
		why: "printed to whole grams",
		source: degrees("36° = 114 g/L"),
	},
	{
		id: "48 degrees",
		inputs: { strength: 48, measure: "chlorometric_degree" },
		expected: 152,
		tolerance: 0.2,
		unit: "g/L",
		why: "printed to whole grams",
		source: degrees("48° = 152 g/L"),
	},
	{
		id: "12 degrees as 3.6 %",
		inputs: { strength: 12, measure: "chlorometric_degree" },
		expected: 36,
		tolerance: 2.1,
		unit: "g/L",
		why: "0.3 % a degree under-reads by 5.4 %",
		source: printed(from.cdcCleaning, "Appendix E: 1 degree is about 0.3 %"),
	},
	{
		id: "5.25 % hypochlorite",
		inputs: { strength: 5.25, measure: "pct_naocl_w_v" },
		expected: 50,
		tolerance: 0.1,
		unit: "g/L",
		why: "5.00 % to two decimals",
		source: weights,
	},
	{
		id: "5.25 % hypochlorite, household",
		inputs: { strength: 5.25, measure: "pct_naocl_w_v" },
		expected: 50,
		tolerance: 0.1,
		unit: "g/L",
		why: "printed as 50,000 ppm",
		source: printed(from.torontoHealth, "household bleach"),
	},
	{
		id: "6 % hypochlorite",
		inputs: { strength: 6, measure: "pct_naocl_w_v" },
		expected: 57.1,
		tolerance: 0.1,
		unit: "g/L",
		why: "5.71 % to two decimals",
		source: weights,
	},
	{
		id: "8.25 % hypochlorite",
		inputs: { strength: 8.25, measure: "pct_naocl_w_v" },
		expected: 78.6,
		tolerance: 0.1,
		unit: "g/L",
		why: "7.86 % to two decimals",
		source: weights,
	},
	{
		id: "5.25 % hypochlorite by weight, density 1.08",
		inputs: { strength: 5.25, measure: "pct_naocl_w_w", density: 1.08 },
		expected: 54,
		tolerance: 0.1,
		unit: "g/L",
		why: "5.40 % to two decimals",
		source: weights,
	},
	{
		id: "g/L over ten times the density",
		inputs: { strength: 120 / 11.68, measure: "pct_w_w", density: 1.168 },
		expected: 120,
		tolerance: 1e-9,
		unit: "g/L",
		why: "the handbook's formula turned round",
		source: printed(from.chlorinationHandbook, "weight % = g/L ÷ (10 × density)", "derived"),
	},
	{
		id: "weight of hypochlorite with the 1.05 factor",
		inputs: { strength: 10, measure: "pct_naocl_w_w", density: 1.16 },
		expected: (10 * 10 * 1.16) / 1.05,
		tolerance: 0.05,
		unit: "g/L",
		why: "1.05 stands for 1.0499",
		source: printed(from.chlorinationHandbook, "factor 1.05"),
	},
];
checkCases("available chlorine of liquids", strengths, ({ strength, measure, density }) => {
	const label: Label = { form: "liquid", strength, measure, density: density ?? null };
	const found = answerOf(availableChlorine, label);
	return found.form === "liquid" ? found.gramsPerLitre : undefined;
});

checkCases(
	"chlorine in hypochlorite",
	[
		{
			id: "hypochlorite over chlorine",
			inputs: 1,
			expected: 1.0499,
			tolerance: 0.0005,
			unit: "g/g",
			why: "printed to four decimals",
			source: weights,
		},
		{
			id: "the trade's factor",
			inputs: 1,
			expected: 1.05,
			tolerance: 0.0005,
			unit: "g/g",
			why: "printed to two decimals",
			source: printed(from.chlorinationHandbook, "factor 1.05"),
		},
	],
	() => 1 / CHLORINE_PER_HYPOCHLORITE,
);

checkCases(
	"a soak weakened by wet kits",
	(
		[
			[50, 0.495],
			[100, 0.49],
			[250, 0.476],
			[500, 0.455],
		] as const
	).map(([mlPerKit, expected]) => ({
		id: `${mlPerKit} mL into 5 L of 0.5 %`,
		inputs: { strengthMadePct: 0.5, bathLitres: 5, kits: 1, mlPerKit },
		expected,
		tolerance: 0.001,
		unit: "%",
		why: "worked out to three decimals",
		source: printed("Mixing rule", "0.5 × 5 ÷ (5 + water)", "derived"),
	})),
	(inputs) => answerOf(strengthAfterCarryIn, inputs),
);
