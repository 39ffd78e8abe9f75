import { measureOut } from "../../src/core/chlorine/measureOut.ts";
import { answerOf } from "../core/answerOf.ts";
import * as from from "./publications.ts";
import { checkCases, type Printed, printed, type ReferenceCase } from "./referenceCase.ts";

interface MadeUp {
	readonly gramsPerLitre: number;
	readonly targetPct: number;
	readonly litres: number;
}

type Row = readonly [
	id: string,
	stock: number,
	target: number,
	litres: number,
	ml: number,
	source: Printed,
];

function measures(
	rows: readonly Row[],
	tolerance: (ml: number) => number,
	why: string,
): ReferenceCase<MadeUp>[] {
	return rows.map(([id, stock, targetPct, litres, expected, source]) => ({
		id,
		inputs: { gramsPerLitre: stock * 10, targetPct, litres },
		expected,
		tolerance: tolerance(expected),
		unit: "mL",
		why,
		source,
	}));
}

const manual = (place: string) => printed(from.ifrcDisinfectants, place);
const sheet = printed(from.sheet56, "500 ppm");
const exact = measures(
	[
		["5 to 0.5 in 1 L", 5, 0.5, 1, 100, manual("100 mL and 900 mL of water")],
		[
			"5 to 0.5 in 1 L, health department",
			5,
			0.5,
			1,
			100,
			printed(from.healthDepartment2020, "100 mL and 900 mL"),
		],
		[
			"5 to 0.5 in 1 L, daily dilution",
			5,
			0.5,
			1,
			100,
			printed(from.dailyDilution, "V = C × V ÷ C"),
		],
		["5 to 0.5, a hundred a litre", 5, 0.5, 1, 100, printed(from.laboratoryDilutions, "Table 12")],
		["5 to 0.1, twenty a litre", 5, 0.1, 1, 20, printed(from.laboratoryDilutions, "Table 12")],
		["5 to 0.2 in 1 L", 5, 0.2, 1, 40, manual("40 mL and 960 mL of water")],
		["5 to 0.05 in 1 L", 5, 0.05, 1, 10, manual("10 mL and 990 mL of water")],
		["5 to 2 in 1 L", 5, 2, 1, 400, manual("400 mL and 600 mL of water")],
		["5 to 0.1 in 20 L", 5, 0.1, 20, 400, printed(from.cdcHandwashing, "fill to 20 L")],
		["10 to 200 ppm in 100 L", 10, 0.02, 100, 200, printed(from.dilutionFactors, "example 2")],
		["5.6 to 500 ppm in 1 L", 5.6, 0.05, 1, 9, sheet],
		["5.6 to 500 ppm in 5 L", 5.6, 0.05, 5, 45, sheet],
		["5.6 to 500 ppm in 10 L", 5.6, 0.05, 10, 89, sheet],
		["5.6 to 500 ppm in 15 L", 5.6, 0.05, 15, 134, sheet],
		["5.6 to 500 ppm in 20 L", 5.6, 0.05, 20, 179, sheet],
		["5.6 to 500 ppm in 100 L", 5.6, 0.05, 100, 893, sheet],
		["5.6 to 500 ppm in 200 L", 5.6, 0.05, 200, 1786, sheet],
		[
			"36 degrees to 1 % in 1 L",
			3.17 * 3.6,
			1,
			1,
			87.7,
			printed(from.stockSolution, "87.7 mL, or half a glass"),
		],
		[
			"5 to 0.5 in 10 L",
			5,
			0.5,
			10,
			1000,
			printed(from.cdcCleaning, "Appendix E, formula", "derived"),
		],
		[
			"2.6 to 0.5 in 5 L",
			2.6,
			0.5,
			5,
			961.5,
			printed(from.cdcCleaning, "Appendix E, formula", "derived"),
		],
		[
			"5 to 0.5, 5 L a day for a week",
			5,
			0.5,
			35,
			3500,
			printed(from.cdcCleaning, "Appendix E, formula", "derived"),
		],
	],
	() => 0.5,
	"the tables print whole millilitres",
);

const rough = measures(
	[
		[
			"2.6 to 0.1 in 5 L",
			2.6,
			0.1,
			5,
			200,
			printed(from.msfCholera, "cell cut off: for 5 litres 200"),
		],
		[
			"5 to 0.05 in 20 L, 14 spoons of 15 mL",
			5,
			0.05,
			20,
			210,
			printed(from.cdcHandwash2020, "14 tablespoons"),
		],
		[
			"5.25 one in ten of a quart",
			5.25,
			0.525,
			0.946,
			94,
			printed(from.washingtonCode, "79 and 15 mL to 946 mL"),
		],
		[
			"5.25 one in a hundred of a quart",
			5.25,
			0.0525,
			0.946,
			10,
			printed(from.washingtonCode, "10 mL to 946 mL"),
		],
	],
	(ml) => 0.06 * ml,
	"cups and spoons: the published amounts are up to 5.7 % over the exact ones",
);

const quantity = ({ gramsPerLitre, targetPct, litres }: MadeUp) =>
	answerOf(measureOut, {
		strength: { form: "liquid", gramsPerLitre },
		litres,
		targetPct,
		stepMl: 0.01,
		stepGrams: 0.01,
	}).quantity;
checkCases("liquid made up to the full volume", exact, quantity);
checkCases("liquid by cups and spoons", rough, quantity);

const waters: ReferenceCase<MadeUp>[] = (
	[
		["5 to 0.5 in 1 L, its water", 0.5, 0.9],
		["5 to 0.2 in 1 L, its water", 0.2, 0.96],
		["5 to 0.05 in 1 L, its water", 0.05, 0.99],
		["5 to 2 in 1 L, its water", 2, 0.6],
	] as const
).map(([id, targetPct, expected]) => ({
	id,
	inputs: { gramsPerLitre: 50, targetPct, litres: 1 },
	expected,
	tolerance: 0.0005,
	unit: "L of water",
	why: "the table prints whole millilitres",
	source: manual("product and water beside each other"),
}));
checkCases(
	"water for a litre",
	waters,
	({ gramsPerLitre, targetPct, litres }) =>
		answerOf(measureOut, {
			strength: { form: "liquid", gramsPerLitre },
			litres,
			targetPct,
			stepMl: 1,
			stepGrams: 1,
		}).waterLitres,
);
