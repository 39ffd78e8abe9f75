import { chanceAtMost, setAside } from "../../src/core/counts/counts.ts";
import { chanceAtLeast, poisson } from "../../src/core/counts/poisson.ts";
import { kitUses } from "../../src/core/kits/kitUses.ts";
import { answerOf } from "../core/answerOf.ts";
import * as from from "./publications.ts";
import { checkCases, printed, type ReferenceCase } from "./referenceCase.ts";

type AtMost = { mean: number; most: number };

/** Mean, then pairs of count and printed chance of at most that count. */
const tables: readonly (readonly [number, Readonly<Record<number, number>>])[] = [
	[0.1, { 0: 0.9048, 1: 0.9953, 2: 0.9998 }],
	[0.3, { 0: 0.7408, 1: 0.9631, 2: 0.9964, 3: 0.9997 }],
	[0.5, { 0: 0.6065, 1: 0.9098, 2: 0.9856, 3: 0.9982 }],
	[1, { 0: 0.3679, 1: 0.7358, 2: 0.9197, 3: 0.981, 4: 0.9963 }],
	[1.2, { 0: 0.3012, 1: 0.6626, 2: 0.8795, 3: 0.9662 }],
	[2, { 0: 0.1353, 2: 0.6767, 3: 0.8571, 4: 0.9473, 5: 0.9834, 6: 0.9955 }],
	[3, { 3: 0.6472, 5: 0.9161, 6: 0.9665, 7: 0.9881, 8: 0.9962 }],
	[4, { 4: 0.6288, 7: 0.9489, 8: 0.9786, 9: 0.9919 }],
	[4.5, { 8: 0.9597, 9: 0.9829 }],
	[5, { 0: 0.0067, 5: 0.616, 8: 0.9319, 9: 0.9682, 10: 0.9863, 11: 0.9945 }],
	[8, { 0: 0.0003, 2: 0.0138, 3: 0.0424, 4: 0.0996 }],
];
const cumulative: ReferenceCase<AtMost>[] = tables.flatMap(([mean, chances]) =>
	Object.entries(chances).map(([most, expected]) => ({
		id: `at most ${most} of mean ${mean}`,
		inputs: { mean, most: Number(most) },
		expected,
		tolerance: 5.1e-5,
		unit: "chance",
		why: "printed to four decimals, some copies rounding a five upwards",
		source: printed(from.poissonTables, `row ${most} of mean ${mean}`),
	})),
);

function finer(
	id: string,
	mean: number,
	most: number,
	expected: number,
	tolerance: number,
): ReferenceCase<AtMost> {
	const why = "recomputed to this many digits";
	const source = printed(from.recomputed, "cumulative Poisson", "computed");
	return { id, inputs: { mean, most }, expected, tolerance, unit: "chance", why, source };
}
const digits = [
	finer("mean 2, twelve digits", 2, 3, 0.857123460499, 1e-12),
	finer("mean 100", 100, 120, 0.977330670922, 1e-11),
	finer("mean 150", 150, 180, 0.992357398431, 1e-11),
	finer("0.44 kits a day, none", 0.44, 0, 0.644036, 1e-6),
	finer("0.44 kits a day, at most one", 0.44, 1, 0.927412, 1e-6),
	finer("0.44 kits a day, at most two", 0.44, 2, 0.989755, 1e-6),
	finer("0.44 kits a day, at most three", 0.44, 3, 0.9989, 5e-5),
	finer("mean 1005 at 1005", 1005, 1005, 0.50839, 5e-6),
	finer("mean 1006.35 at 1055", 1006.35, 1055, 0.93849, 5e-6),
];
const atMost = ({ mean, most }: AtMost) => chanceAtMost(poisson(mean), most);
checkCases("cumulative Poisson tables", cumulative, atMost);
checkCases("cumulative Poisson, more digits", digits, atMost);

const nights = (births: number, expected: number): ReferenceCase<AtMost> => ({
	id: `${births} births in a night`,
	inputs: { mean: 1000 / 365, most: births },
	expected,
	tolerance: 6e-4,
	unit: "chance",
	why: "printed to three decimals from a mean rounded to 2.74",
	source: printed(from.hospitalNights, `chance of ${births}`),
});
checkCases(
	"births in a hospital's nights",
	[nights(0, 0.065), nights(1, 0.177), nights(2, 0.242), nights(3, 0.221)],
	({ mean, most }) => atMost({ mean, most }) - (most === 0 ? 0 : atMost({ mean, most: most - 1 })),
);
checkCases(
	"busy nights in a year",
	[
		{
			id: "five births or more",
			inputs: 2.74,
			expected: 52.232,
			tolerance: 1e-3,
			unit: "nights",
			why: "recomputed to three decimals; a re-posted solution prints 62, which is wrong",
			source: printed(from.recomputed, "365 × chance of five or more", "computed"),
		},
	],
	(mean) => 365 * chanceAtLeast(5, mean),
);

const levels = [0.5, 0.8, 0.9, 0.95, 0.98, 0.99, 0.999] as const;
/** Mean, then what to set aside at each of the levels. */
const quantiles: readonly (readonly [number, ...number[]])[] = [
	[0.05, 0, 0, 0, 0, 1, 1, 2],
	[0.1, 0, 0, 0, 1, 1, 1, 2],
	[0.3, 0, 1, 1, 1, 2, 2, 3],
	[0.5, 0, 1, 1, 2, 2, 3, 4],
	[1, 1, 2, 2, 3, 3, 4, 5],
	[1.5, 1, 2, 3, 4, 4, 5, 6],
	[2, 2, 3, 4, 5, 5, 6, 8],
	[2.74, 3, 4, 5, 6, 7, 7, 9],
	[3, 3, 4, 5, 6, 7, 8, 10],
	[4, 4, 6, 7, 8, 9, 9, 11],
	[5, 5, 7, 8, 9, 10, 11, 13],
	[6.5, 6, 9, 10, 11, 12, 13, 16],
	[8, 8, 10, 12, 13, 14, 15, 18],
	[10, 10, 13, 14, 15, 17, 18, 21],
	[12, 12, 15, 17, 18, 20, 21, 24],
	[15, 15, 18, 20, 22, 23, 25, 28],
	[20, 20, 24, 26, 28, 30, 31, 35],
	[30, 30, 35, 37, 39, 42, 43, 48],
	[50, 50, 56, 59, 62, 65, 67, 73],
	[100, 100, 108, 113, 117, 121, 124, 132],
];
type Level = { mean: number; level: number };
const whole = (mean: number, level: number, expected: number): ReferenceCase<Level> => ({
	id: `mean ${mean} at ${level}`,
	inputs: { mean, level },
	expected,
	tolerance: 0,
	unit: "counts",
	why: "a whole number",
	source: printed(from.recomputed, "Poisson quantiles", "computed"),
});
checkCases(
	"Poisson quantiles",
	[
		...quantiles.flatMap(([mean, ...counts]) =>
			counts.map((k, i) => whole(mean, levels[i] as number, k)),
		),
		whole(0, 0.999, 0),
		whole(5000, 0.5, 5000),
		whole(5000, 0.75, 5048),
		whole(178 / 30.4 / 20, 0.95, 1),
		whole(178 / 30.4 / 20, 0.99, 2),
		whole(178 / 30.4 / 2, 0.99, 8),
		whole(300 / 30.4 / 10, 0.95, 3),
		whole(300 / 30.4 / 10, 0.99, 4),
	],
	({ mean, level }) => setAside(poisson(mean), level),
);

checkCases(
	"kits used",
	[
		{
			id: "stimulated",
			inputs: { births: 22_752, kitsPer100Births: 16.2 },
			expected: 3688,
			tolerance: 12,
			unit: "babies",
			why: "the share is printed to a tenth of a percent",
			source: printed(from.enBirth, "abstract"),
		},
		{
			id: "bag-masked",
			inputs: { births: 22_752, kitsPer100Births: 4.4 },
			expected: 998,
			tolerance: 12,
			unit: "babies",
			why: "the share is printed to a tenth of a percent",
			source: printed(from.enBirth, "abstract"),
		},
		{
			id: "64 births, 3 of 100",
			inputs: { births: 64, kitsPer100Births: 3 },
			expected: 1.9,
			tolerance: 0.1,
			unit: "uses a month",
			why: "printed to one decimal",
			source: printed(from.facilities, "median births a month", "derived"),
		},
		{
			id: "64 births, 6 of 100",
			inputs: { births: 64, kitsPer100Births: 6 },
			expected: 3.8,
			tolerance: 0.1,
			unit: "uses a month",
			why: "printed to one decimal",
			source: printed(from.facilities, "median births a month", "derived"),
		},
	],
	(inputs) => answerOf(kitUses, inputs),
);
