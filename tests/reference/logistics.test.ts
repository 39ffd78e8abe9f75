import { soaks } from "../../src/core/rounds/loads.ts";
import type { RoundsOfDay } from "../../src/core/rounds/roundsOfDay.ts";
import { monthsOfStock } from "../../src/core/stock/monthsOfStock.ts";
import { orderPacks } from "../../src/core/stock/orderPacks.ts";
import { targetStock } from "../../src/core/stock/targetStock.ts";
import { useExpected, useSetAside } from "../../src/core/stock/useSetAside.ts";
import { answerOf } from "../core/answerOf.ts";
import * as from from "./publications.ts";
import { checkCases, printed } from "./referenceCase.ts";

const oneByOne = (kits: number): RoundsOfDay => ({
	kind: "after_each_use",
	kits: [kits],
	byKind: [[kits]],
});
const none = { perDay: 0, perRound: 0, perLoad: [0], perKit: [0], perDescale: 0 };
const over = (days: number, kits: number) => ({
	days: Array.from({ length: days }, () => oneByOne(kits)),
	loads: soaks(3),
	descaleEvery: 0,
});
/** Working weeks of the year that the exercise counts, in days. */
const workingYear = 48 * 7;

checkCases(
	"what goes for certain over a period",
	[
		{
			id: "2,000 doses a year of 48 working weeks, two weeks",
			inputs: { perDay: 2000 / workingYear, days: 14 },
			expected: 83,
			tolerance: 0.5,
			unit: "doses",
			why: "printed rounded; 83.33",
			source: printed(from.openUniversity, "5.5.1"),
		},
		{
			id: "two patients, six tablets a day, 90 days",
			inputs: { perDay: 2 * 6, days: 90 },
			expected: 1080,
			tolerance: 1e-9,
			unit: "tablets",
			why: "exact",
			source: printed(from.openUniversityResources, "6.3.3"),
		},
		{
			id: "180 a year, 90 days",
			inputs: { perDay: 180 / 365, days: 90 },
			expected: 45,
			tolerance: 0.7,
			unit: "pieces",
			why: "the manual rounds 180/365 up to half a piece a day",
			source: printed(from.operationsManual, "minimum"),
		},
		{
			id: "180 a year, 180 days",
			inputs: { perDay: 0.5, days: 180 },
			expected: 90,
			tolerance: 1e-9,
			unit: "pieces",
			why: "with the manual's half a piece a day",
			source: printed(from.operationsManual, "maximum"),
		},
	],
	({ perDay, days }) => answerOf(useExpected, { rates: { ...none, perDay }, ...over(days, 0) }),
);

checkCases(
	"wastage",
	[
		{
			id: "30 % wasted, factor",
			inputs: { use: 1, wastagePct: 30 },
			expected: 1.43,
			tolerance: 0.005,
			unit: "times",
			why: "printed to two decimals",
			source: printed(from.covidLogistics, "wastage factor"),
		},
		{
			id: "10 % wasted, factor",
			inputs: { use: 1, wastagePct: 10 },
			expected: 1.11,
			tolerance: 0.005,
			unit: "times",
			why: "printed to two decimals",
			source: printed(from.tuberculosisProgramme, "wastage factor"),
		},
		{
			id: "20,000 doses, 15 % wasted",
			inputs: { use: 50_000 * 0.4, wastagePct: 15 },
			expected: 23_400,
			tolerance: 130,
			unit: "doses",
			why: "the guideline cuts 1/0.85 = 1.1765 to 1.17",
			source: printed(from.msfNeeds, "6.2"),
		},
		{
			id: "20,000 doses, 15 % wasted, exactly",
			inputs: { use: 20_000, wastagePct: 15 },
			expected: 23_529.411_764_7,
			tolerance: 1e-6,
			unit: "doses",
			why: "20,000/0.85",
			source: printed(from.recomputed, "losses", "computed"),
		},
	],
	(inputs) => answerOf(targetStock, inputs),
);

const ordered = (inputs: { target: number; usable: number; onOrder: number; packSize: number }) =>
	answerOf(orderPacks, inputs) * inputs.packSize;
checkCases(
	"what to order up to a maximum",
	[
		{
			id: "100 a month, minimum 200, maximum 400: 150 here, 50 on order",
			inputs: { target: 100 * (1 + 1 + 2), usable: 150, onOrder: 50, packSize: 1 },
			expected: 200,
			tolerance: 0,
			unit: "pieces",
			why: "exact",
			source: printed(from.familyPlanningHandbook, "lead 1, safety 1, review 2 months", "derived"),
		},
		{
			id: "80 in two weeks and a minimum of 25 %: maximum 100, none here",
			inputs: { target: 80 * 1.25, usable: 0, onOrder: 0, packSize: 1 },
			expected: 100,
			tolerance: 0,
			unit: "doses",
			why: "exact",
			source: printed(from.openUniversity, "5.5.3"),
		},
		{
			id: "the same with the minimum of 20 here",
			inputs: { target: 80 * 1.25, usable: 80 * 0.25, onOrder: 0, packSize: 1 },
			expected: 80,
			tolerance: 0,
			unit: "doses",
			why: "exact",
			source: printed(from.openUniversity, "5.5.2"),
		},
		{
			id: "13.7 a day, 24 days, 150 here",
			inputs: {
				target: 13.7 * 24 + 1.64 * 5 * Math.sqrt(24),
				usable: 150,
				onOrder: 0,
				packSize: 0.001,
			},
			expected: 218.97,
			tolerance: 0.01,
			unit: "pieces",
			why: "the exercise's own normal target; only the subtraction and the packs are ours",
			source: printed(from.fixedInterval, "13.70 a day, σ 5, 14 + 10 days"),
		},
		...[
			[46, 1135],
			[10, 1171],
			[103, 1078],
		].map(([usable, expected]) => ({
			id: `68 a day, 17 days, ${usable} here`,
			inputs: {
				target: 68 * 17 + 2.055 * 3 * Math.sqrt(17),
				usable: usable as number,
				onOrder: 0,
				packSize: 1,
			},
			expected: expected as number,
			tolerance: 1,
			unit: "pieces",
			why: "printed to the nearest piece; whole packs are rounded up here",
			source: printed(from.fixedInterval, "drugstore, 98 %, every 15 days, 2 days to delivery"),
		})),
	],
	ordered,
);

checkCases(
	"months of stock",
	[
		{ id: "the minimum of 200 at 100 a month", usable: 200, expected: 2 },
		{ id: "the maximum of 400 at 100 a month", usable: 400, expected: 4 },
	].map(({ id, usable, expected }) => ({
		id,
		inputs: { usable, usePerDay: 100 / 30.4 },
		expected,
		tolerance: 1e-9,
		unit: "months",
		why: "exact",
		source: printed(
			from.logisticsHandbook,
			"stock on hand ÷ average monthly consumption",
			"derived",
		),
	})),
	(inputs) => answerOf(monthsOfStock, inputs),
);

/** Low counts: the exact quantile, where the normal formula's is beside it in the notes. */
checkCases(
	"use over lead and review days at a service level",
	(
		[
			[5, 10, 0.9, 59],
			[5, 10, 0.95, 62],
			[5, 10, 0.99, 67],
			[0.03, 10, 0.95, 1],
			[0.3, 10, 0.95, 6],
			[1.5, 4, 0.9, 9],
		] as const
	).map(([kits, days, confidence, expected]) => ({
		id: `${kits} a day over ${days} days at ${confidence}`,
		inputs: { kits, days, confidence },
		expected,
		tolerance: 0,
		unit: "pieces",
		why: "a whole number; scipy and R agree",
		source: printed(from.recomputed, "Poisson quantile over the period", "computed"),
	})),
	({ kits, days, confidence }) =>
		answerOf(useSetAside, { rates: { ...none, perKit: [1] }, ...over(days, kits), confidence }),
);
