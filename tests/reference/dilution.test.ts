import { describe, expect, test } from "vitest";
import { measureOut } from "../../src/core/chlorine/measureOut.ts";
import { answerOf, refusalOf } from "../core/answerOf.ts";
import * as from from "./publications.ts";
import { checkCases, printed, type ReferenceCase } from "./referenceCase.ts";

type Dilution = { stockPct: number; targetPct: number };
type Row = readonly [
	id: string,
	stock: number,
	target: number,
	parts: number,
	source: ReturnType<typeof printed>,
];

function dilutions(
	rows: readonly Row[],
	tolerance: number,
	why: string,
): ReferenceCase<Dilution>[] {
	return rows.map(([id, stockPct, targetPct, expected, source]) => ({
		id,
		inputs: { stockPct, targetPct },
		expected,
		tolerance,
		unit: "parts of water",
		why,
		source,
	}));
}

const appendix = printed(from.cdcCleaning, "Appendix E");
const exact = dilutions(
	[
		["3.5 to 0.5", 3.5, 0.5, 6, appendix],
		["5 to 0.1", 5, 0.1, 49, appendix],
		["5 to 0.1, outbreak guidance", 5, 0.1, 49, printed(from.ebolaGuidance, "p. 24")],
		["5 to 0.5", 5, 0.5, 9, printed(from.skillChecklist, "dilution 1:9")],
		["5 to 0.05", 5, 0.05, 99, printed(from.acuteRespiratory, "Annex G, Table G.1")],
		[
			"2.5 to 0.05: 2 parts and 98",
			2.5,
			0.05,
			49,
			printed(from.acuteRespiratory, "Annex G, Table G.1"),
		],
		["10 to 250 ppm, factor 400", 10, 0.025, 399, printed(from.dilutionFactors, "example 1")],
		["5.25 to 0.5", 5.25, 0.5, 9.5, printed(from.dilutionFormula, "stock ÷ target − 1", "derived")],
		["2.4 to 0.5", 2.4, 0.5, 3.8, printed(from.dilutionFormula, "stock ÷ target − 1", "derived")],
		["4 to 0.5", 4, 0.5, 7, printed(from.dilutionFormula, "stock ÷ target − 1", "derived")],
		["6 to 0.5", 6, 0.5, 11, printed(from.dilutionFormula, "stock ÷ target − 1", "derived")],
		["10 to 0.5", 10, 0.5, 19, printed(from.dilutionFormula, "stock ÷ target − 1", "derived")],
		["12 to 0.5", 12, 0.5, 23, printed(from.dilutionFormula, "stock ÷ target − 1", "derived")],
		["15 to 0.5", 15, 0.5, 29, printed(from.dilutionFormula, "stock ÷ target − 1", "derived")],
		["15 to 1", 15, 1, 14, printed(from.dilutionFormula, "stock ÷ target − 1", "derived")],
		[
			"2.6 to 0.5, exact",
			2.6,
			0.5,
			4.2,
			printed(from.dilutionFormula, "stock ÷ target − 1", "derived"),
		],
		["equal strength", 0.5, 0.5, 0, printed(from.dilutionFormula, "no water at all", "derived")],
	],
	0.01,
	"the formula itself; a hundredth of a part cannot be measured",
);

/** Printed in whole parts, `away` from the exact ones, which stand above. */
function wholeParts(away: number, row: Row): ReferenceCase<Dilution>[] {
	return dilutions([row], away + 0.001, `printed in whole parts, ${away} from the exact ones`);
}
const whole = [
	...wholeParts(0.2, [
		"2.6 to 0.5, poster",
		2.6,
		0.5,
		4,
		printed(from.cdcPoster2014, "strong solution"),
	]),
	...wholeParts(0.5, [
		"5.25 to 0.5, 100 mL and 900 mL",
		5.25,
		0.5,
		9,
		printed(from.westernUniversity, "dilution"),
	]),
	...wholeParts(0.5, [
		"5.25 to 0.5, fifty to five hundred",
		5.25,
		0.5,
		10,
		printed("Northwestern Health Unit", "strong solution"),
	]),
];

const remembered = (percent: number) =>
	printed(from.infectionBooklet, `row ${percent} %`, "from memory");
/** Stock in %, parts for 0.5 %, parts for 0.1 %. */
const booklet = [
	[2.4, 4, 23],
	[3.5, 6, 34],
	[3.6, 6, 35],
	[4, 7, 39],
	[5, 9, 49],
	[6, 11, 59],
	[8, 15, 79],
	[10, 19, 99],
	[15, 29, 149],
] as const;
const bookletRow = (stock: number, target: number, parts: number): Row => [
	`${stock} to ${target}, booklet`,
	stock,
	target,
	parts,
	remembered(stock),
];
/** Those of the booklet that are no whole parts: 3.8 is printed as 4, 6.2 as 6. */
const roundedStocks: readonly number[] = [2.4, 3.6];
const fromMemory = booklet.flatMap(([stock, half, tenth]) => [
	...(roundedStocks.includes(stock)
		? wholeParts(0.2, bookletRow(stock, 0.5, half))
		: dilutions([bookletRow(stock, 0.5, half)], 0.01, "whole parts by the formula")),
	...dilutions([bookletRow(stock, 0.1, tenth)], 0.01, "whole parts by the formula"),
]);

/** What a litre takes of a liquid stock, measured so finely that no rounding shows. */
const oneLitre = ({ stockPct, targetPct }: Dilution) => ({
	strength: { form: "liquid" as const, gramsPerLitre: stockPct * 10 },
	litres: 1,
	targetPct,
	stepMl: 1e-6,
	stepGrams: 1,
});
const parts = (inputs: Dilution) => {
	const { waterLitres, quantity } = answerOf(measureOut, oneLitre(inputs));
	return (waterLitres * 1000) / quantity;
};
checkCases("parts of water, by the formula", exact, parts);
checkCases("parts of water, as published", whole, parts);
checkCases("parts of water, from memory", fromMemory, parts);

checkCases(
	"stock added to a litre of water",
	(
		[
			["15 to 1", 71.4, 0.05, "worked out to one decimal", "exact", "derived"],
			[
				"15 to 1, manual",
				70,
				1.43,
				"printed in tens of mL: 2 % of the exact 71.4",
				"70 mL",
				"seen",
			],
		] as const
	).map(([id, expected, tolerance, why, place, mark]) => ({
		id,
		inputs: { stockPct: 15, targetPct: 1 },
		expected,
		tolerance,
		unit: "mL",
		why,
		source: printed(from.choleraManual, `Appendix 14: ${place}`, mark),
	})),
	(inputs) => 1000 / parts(inputs),
);

describe("a stock weaker than the target", () => {
	test.each([
		[0.4, 0.5],
		[0.05, 0.1],
		[0, 0.5],
	])("%d %% cannot make %d %%", (stockPct, targetPct) => {
		expect(refusalOf(measureOut, oneLitre({ stockPct, targetPct })).map((p) => p.code)).toEqual([
			"too-weak",
		]);
	});
});
