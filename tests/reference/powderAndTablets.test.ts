import { measureOut } from "../../src/core/chlorine/measureOut.ts";
import { answerOf } from "../core/answerOf.ts";
import * as from from "./publications.ts";
import { checkCases, type Printed, printed, type ReferenceCase } from "./referenceCase.ts";

interface Powder {
	readonly strengthPct: number;
	readonly targetPct: number;
	readonly litres: number;
}

type Row = readonly [
	id: string,
	strength: number,
	target: number,
	litres: number,
	grams: number,
	source: Printed,
];

function powders(
	rows: readonly Row[],
	tolerance: (grams: number) => number,
	why: string,
): ReferenceCase<Powder>[] {
	return rows.map(([id, strengthPct, targetPct, litres, expected, source]) => ({
		id,
		inputs: { strengthPct, targetPct, litres },
		expected,
		tolerance: tolerance(expected),
		unit: "g",
		why,
		source,
	}));
}

const derived = printed(from.dilutionFormula, "target ÷ strength × 1,000", "derived");
const exact = powders(
	[
		["35 to 0.5, a litre", 35, 0.5, 1, 14.286, derived],
		["70 to 0.5, a litre", 70, 0.5, 1, 7.143, derived],
		["65 to 0.5, a litre", 65, 0.5, 1, 7.692, derived],
		[
			"65 to 0.5, five litres",
			65,
			0.5,
			5,
			38.46,
			printed(from.cdcCleaning, "Appendix E, formula", "derived"),
		],
		["60 to 0.5, a litre", 60, 0.5, 1, 8.333, derived],
		["25 to 0.5, a litre", 25, 0.5, 1, 20, derived],
		["30 to 0.1, a litre", 30, 0.1, 1, 3.33, derived],
		["56 to 0.5, a litre", 56, 0.5, 1, 8.93, derived],
		["66 to 0.5, a litre: 70 % after two years", 66, 0.5, 1, 7.58, derived],
	],
	() => 0.01,
	"the formula itself",
);

const field = (place: string) => printed(from.choleraManual, place);
const laboratory = printed(from.laboratoryDilutions, "Table 12");
const remembered = printed(from.infectionBooklet, "powder table", "from memory");
/** How far a printed amount may be from the exact one, as a share of what is printed. */
const within = (share: number) => (grams: number) => share * grams;
const published = [
	...powders(
		[
			["35 to 0.5", 35, 0.5, 1, 14.3, printed(from.cdcCleaning, "Appendix E")],
			["35 to 0.5, atlas", 35, 0.5, 1, 14.2, printed(from.iarcAtlas, "about 3 level teaspoons")],
			["70 to 1", 70, 1, 1, 14.3, printed(from.stockSolution, "1 %")],
			["70 to 0.5, booklet", 70, 0.5, 1, 7.1, remembered],
			["60 to 0.5, booklet", 60, 0.5, 1, 8.3, remembered],
		],
		within(0.01),
		"printed to a tenth of a gram, or a tenth beside it: 0.6 % off at most",
	),
	...powders(
		[["chloramine, 25 to 0.5", 25, 0.5, 1, 20, laboratory]],
		() => 0.01,
		"a whole number by the formula",
	),
	...powders(
		[["chlorinated lime, 30 to 1", 30, 1, 1, 33, field("Appendix 14")]],
		within(0.015),
		"33.3 printed in whole grams: 1 % off",
	),
	...powders(
		[
			["70 to 0.5", 70, 0.5, 1, 7.0, laboratory],
			[
				"70 to 0.5, indian module",
				70,
				0.5,
				1,
				7.0,
				printed(from.operationalModule, "Table 5.4, p. 71"),
			],
			["70 to 0.1", 70, 0.1, 1, 1.4, laboratory],
			["70 to 0.05", 70, 0.05, 1, 0.7, field("Appendix 9")],
			["dichloroisocyanurate, 60 to 0.5", 60, 0.5, 1, 8.5, laboratory],
			["dichloroisocyanurate, 60 to 0.1", 60, 0.1, 1, 1.7, laboratory],
		],
		within(0.025),
		"printed in two digits, all from one rounded row: 2 % off",
	),
	...powders(
		[
			[
				"70 to 0.5, one spoon in two litres",
				70,
				0.5,
				2,
				15,
				printed(from.ifrcDisinfectants, "1 level tablespoon"),
			],
			["70 to 0.1 in 10 L", 70, 0.1, 10, 15, printed(from.msfCholera, "0.1 %")],
			["70 to 0.1 in 20 L", 70, 0.1, 20, 30, printed(from.cdcHandwashing, "2 tablespoons")],
			["35 to 0.1 in 20 L", 35, 0.1, 20, 60, printed(from.cdcHandwashing, "4 tablespoons")],
			["70 to 0.2", 70, 0.2, 1, 3, field("Appendix 9")],
			["70 to 0.2 in 10 L", 70, 0.2, 10, 30, printed(from.msfCholera, "0.2 %")],
			["70 to 2", 70, 2, 1, 30, field("Appendix 9")],
			["70 to 2 in 10 L", 70, 2, 10, 300, printed(from.msfCholera, "2 %")],
			["70 to 1, one spoon", 70, 1, 1, 15, field("Appendix 14")],
		],
		within(0.055),
		"whole spoons of 15 g, and what follows from them: 5 % off",
	),
];

const grams = ({ strengthPct, targetPct, litres }: Powder) =>
	answerOf(measureOut, {
		strength: { form: "powder", gramsPerGram: strengthPct / 100 },
		litres,
		targetPct,
		stepMl: 1,
		stepGrams: 0.0001,
	}).quantity;
checkCases("powder, by the formula", exact, grams);
checkCases("powder, as published", published, grams);

interface Tablets {
	readonly gramsPerTablet: number;
	readonly targetPct: number;
	readonly litres: number;
}

const tabletRows: readonly Row[] = [
	["tablets of 1.5 g to 0.5", 1.5, 0.5, 1, 4, laboratory],
	["tablets of 1.5 g to 0.1", 1.5, 0.1, 1, 1, laboratory],
	["tablets of 1 g to 1", 1, 1, 1, 10, field("Appendix 14")],
	["tablets of 1 g to 0.5", 1, 0.5, 1, 5, derived],
	["tablets of 1 g to 0.5 in 10 L", 1, 0.5, 10, 50, derived],
	["tablets of 1 g to 0.1", 1, 0.1, 1, 1, derived],
	["tablets of 1 g to 0.05 in 2 L", 1, 0.05, 2, 1, derived],
	[
		"tablets of 5 g to 0.5",
		5,
		0.5,
		1,
		1,
		printed(from.ifrcDisinfectants, "8.68 g tablets; their 5 g of chlorine from memory"),
	],
	[
		"tablets of 5 g to 2",
		5,
		2,
		1,
		4,
		printed(from.ifrcDisinfectants, "8.68 g tablets; their 5 g of chlorine from memory"),
	],
	[
		"tablets of 5 g to 0.2 in 10 L",
		5,
		0.2,
		10,
		4,
		printed(from.ifrcDisinfectants, "8.68 g tablets; their 5 g of chlorine from memory"),
	],
	[
		"tablets of 5 g to 0.05 in 10 L",
		5,
		0.05,
		10,
		1,
		printed(from.ifrcDisinfectants, "8.68 g tablets; their 5 g of chlorine from memory"),
	],
];
const tablets: ReferenceCase<Tablets>[] = tabletRows.map(
	([id, gramsPerTablet, targetPct, litres, expected, source]) => ({
		id,
		inputs: { gramsPerTablet, targetPct, litres },
		expected,
		tolerance: 0,
		unit: "tablets",
		why: "whole tablets, rounded up",
		source,
	}),
);
checkCases(
	"tablets",
	tablets,
	({ gramsPerTablet, ...mix }) =>
		answerOf(measureOut, {
			strength: { form: "tablet", gramsPerTablet },
			...mix,
			stepMl: 1,
			stepGrams: 1,
		}).quantity,
);
