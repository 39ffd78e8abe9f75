import { describe, expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { boilingPoint } from "../../../src/core/water/boilingPoint.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf, refusalOf } from "../answerOf.ts";
import { columnOf } from "../contentOf.ts";
import { problemCodes } from "../planCells.ts";
import { unitWith } from "../smallUnit.ts";

test.each([
	[0, 100],
	[1000, 96.7],
	[1500, 95],
	[2000, 93.4],
	[3000, 90],
])("at %d m water boils at %d °C", (altitudeM, celsius) => {
	expectWithin(answerOf(boilingPoint, { altitudeM }), celsius, 0.05, "°C");
});

describe("how high and how low", () => {
	test.each([
		[-400, 101.3],
		[5500, 81.6],
	])("%d m is accepted", (altitudeM, celsius) => {
		expectWithin(answerOf(boilingPoint, { altitudeM }), celsius, 0.06, "°C");
		const made = plan(
			unitWith({ altitude_m: altitudeM, heat_kw: 3, births_per_day: 5, count_every_days: 366 }),
		);
		expect(problemCodes(made)).toEqual([]);
		expectWithin(Number(columnOf(made, "boiling.csv", "boiling_point_c")[0]), celsius, 0.06, "°C");
	});

	test.each([-401, 5501])(
		"%d m is refused by name, and no boiling point is made up",
		(altitudeM) => {
			expect(refusalOf(boilingPoint, { altitudeM })).toMatchObject([
				{ code: "outside-limits", allowed: "a number from -400 to 5500" },
			]);
			const made = plan(
				unitWith({ altitude_m: altitudeM, heat_kw: 3, births_per_day: 5, count_every_days: 366 }),
			);
			expect(made.problems.filter((p) => p.weight === "error")).toMatchObject([
				{
					code: "bad-cell",
					received: String(altitudeM),
					message: expect.stringMatching(/Height above the sea/),
				},
			]);
			expect(new Set(columnOf(made, "boiling.csv", "boiling_point_c"))).toEqual(
				new Set([undefined]),
			);
		},
	);
});
