import { setAside } from "../../src/core/counts/counts.ts";
import { chanceAtLeast, expectedBeyond, poisson } from "../../src/core/counts/poisson.ts";
import * as from from "./publications.ts";
import { checkCases, type Printed, printed, type ReferenceCase } from "./referenceCase.ts";

type Stock = { stock: number; mean: number };

function beyond(
	mean: number,
	row: readonly number[],
	tolerance: number,
	source: Printed,
): ReferenceCase<Stock>[] {
	return row.map((expected, stock) => ({
		id: `${stock} kits, mean ${mean}`,
		inputs: { stock, mean },
		expected,
		tolerance,
		unit: "needs waiting",
		why: "remembered to three decimals",
		source,
	}));
}
const book = printed(from.sherbrooke, "expected backorders", "from memory");
const computed = printed(from.recomputed, "expected backorders", "computed");
checkCases(
	"needs waiting for a kit",
	[
		...beyond(1, [1, 0.368, 0.104, 0.023, 0.004], 5e-4, book),
		...beyond(
			4,
			[4, 3.018, 2.11, 1.348, 0.781, 0.41, 0.195, 0.085, 0.034, 0.012, 0.004],
			1e-3,
			book,
		),
		{
			id: "2 kits, mean 0.5",
			inputs: { stock: 2, mean: 0.5 },
			expected: 0.016327,
			tolerance: 1e-6,
			unit: "needs waiting",
			why: "six decimals",
			source: computed,
		},
		{
			id: "3 kits, mean 2",
			inputs: { stock: 3, mean: 2 },
			expected: 0.218018,
			tolerance: 1e-6,
			unit: "needs waiting",
			why: "six decimals",
			source: computed,
		},
		{
			id: "4 kits, mean 4, six digits",
			inputs: { stock: 4, mean: 4 },
			expected: 0.781467,
			tolerance: 1e-6,
			unit: "needs waiting",
			why: "six decimals",
			source: computed,
		},
	],
	({ stock, mean }) => expectedBeyond(stock, mean),
);

const filled: readonly (readonly [number, number, number])[] = [
	[11, 0.583, 0.583],
	[12, 0.697, 0.6968],
	[13, 0.792, 0.7916],
	[14, 0.864, 0.8645],
	[15, 0.917, 0.9165],
	[16, 0.951, 0.9513],
	[20, 0.997, 0.9965],
];
checkCases(
	"needs met at once, ten in reprocessing",
	filled.flatMap(([stock, remembered, digits]): ReferenceCase<Stock>[] => [
		{
			id: `${stock} kits, book`,
			inputs: { stock, mean: 10 },
			expected: remembered,
			tolerance: 6e-4,
			unit: "share",
			why: "remembered to three decimals",
			source: printed(from.factoryPhysics, "fill rates", "from memory"),
		},
		{
			id: `${stock} kits, recomputed`,
			inputs: { stock, mean: 10 },
			expected: digits,
			tolerance: 6e-5,
			unit: "share",
			why: "recomputed to four decimals",
			source: printed(from.recomputed, "P(X ≤ R − 1)", "computed"),
		},
	]),
	({ stock, mean }) => 1 - chanceAtLeast(stock, mean),
);

/** One round a day, kits ready three days later: ordering every day with a lead of three days. */
checkCases(
	"needs met, 1.5 a day, ordered daily, three days away",
	[
		{
			id: "8 kits",
			inputs: 8,
			expected: 0.8357,
			tolerance: 5e-5,
			unit: "share",
			why: "recomputed to four decimals",
			source: printed(from.orderUpTo, "question seen, answer recomputed", "computed"),
		},
		{
			id: "9 kits",
			inputs: 9,
			expected: 0.9107,
			tolerance: 5e-5,
			unit: "share",
			why: "recomputed to four decimals",
			source: printed(from.orderUpTo, "question seen, answer recomputed", "computed"),
		},
	],
	(kits) =>
		1 -
		// Reviewed each day, back after three: uses beyond the kits up to four days less those up to three.
		(expectedBeyond(kits, 4 * 1.5) - expectedBeyond(kits, 3 * 1.5)) / 1.5,
);
checkCases(
	"more than eight needed in four days",
	[
		{
			id: "1.5 a day",
			inputs: 6,
			expected: 0.15276,
			tolerance: 5e-6,
			unit: "chance",
			why: "recomputed to five decimals",
			source: printed(from.orderUpTo, "question seen, answer recomputed", "computed"),
		},
	],
	(mean) => chanceAtLeast(9, mean),
);
checkCases(
	"five a day, ordered every seven days, three days away",
	(
		[
			[0.9, 59],
			[0.95, 62],
			[0.99, 67],
		] as const
	).map(([level, expected]) => ({
		id: `sure to ${level}`,
		inputs: level,
		expected,
		tolerance: 0,
		unit: "pieces",
		why: "a whole number",
		source: printed(from.recomputed, "quantile of mean 50", "computed"),
	})),
	(level) => setAside(poisson(5 * (7 + 3)), level),
);
