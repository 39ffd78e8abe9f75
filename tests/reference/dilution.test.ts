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

const whole = dilutions(
	[
		["2.6 to 0.5, poster", 2.6, 0.5, 4, printed(from.cdcPoster2014, "strong solution")],
		["5.25 to 0.5, 100 mL and 900 mL", 5.25, 0.5, 9, printed(from.westernUniversity, "dilution")],
		[
			"5.25 to 0.5, fifty to five hundred",
			5.25,
			0.5,
			10,
			printed("Northwestern Health Unit", "strong solution"),
		],
		[
			"15 to 1",
			15,
			1,
			14,
			printed(from.choleraManual, "Appendix 14: 70 mL a litre, exact 14 parts"),
		],
	],
	0.55,
	"published dilutions are rounded to whole parts, 5.5 % of the strength at most",
);

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
const fromMemory = dilutions(
	booklet.flatMap(([stock, half, tenth]): Row[] => [
		[`${stock} to 0.5, booklet`, stock, 0.5, half, remembered(stock)],
		[`${stock} to 0.1, booklet`, stock, 0.1, tenth, remembered(stock)],
	]),
	0.201,
	"the booklet rounds to whole parts: 3.8 to 4 and 6.2 to 6 are its furthest",
);

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
