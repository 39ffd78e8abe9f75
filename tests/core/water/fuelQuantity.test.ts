import { describe, expect, test } from "vitest";
import { fuelQuantity } from "../../../src/core/water/fuelQuantity.ts";
import { heatToBoil } from "../../../src/core/water/heatToBoil.ts";
import { netPower, netPowerMeasured } from "../../../src/core/water/netPower.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf, refusalOf } from "../answerOf.ts";

test.each([
	[10, 25, 100, 3139.5],
	[10, 25, 90, 2720.9],
	[0, 25, 100, 0],
	[10, 100, 100, 0],
	[10, 100, 93.4, 0],
])("%d L from %d °C to %d °C take %d kJ", (litres, drawnC, boilingC, kj) => {
	expectWithin(heatToBoil(litres, drawnC, boilingC), kj, 1e-9, "kJ");
});

describe("heat that reaches the water", () => {
	test("is the stove's heat times its share", () => {
		expectWithin(answerOf(netPower, { heatKw: 3, efficiency: 0.12 }), 0.36, 1e-12, "kW");
	});

	test.each([
		[0, "0 kW"],
		[null, ""],
	])(
		"there is none from a stove of %s kW, and it is said where to enter it",
		(heatKw, received) => {
			expect(refusalOf(netPower, { heatKw, efficiency: 0.2 })).toMatchObject([
				{
					code: "no-heat",
					received,
					allowed: "more than 0 kW",
					file: "unit.csv",
					column: "heat_kw",
				},
			]);
		},
	);

	test("a pot filled with water that boils as it is drawn tells nothing of the stove", () => {
		const pot = { potLitres: 10, boilingC: 95, minutes: 50 };
		expect(refusalOf(netPowerMeasured, { ...pot, drawnC: 95 })).toMatchObject([
			{
				code: "drawn-at-boil",
				received: "95 °C",
				allowed: "cooler than 95 °C",
				file: "unit.csv",
				column: "tap_water_c",
			},
		]);
		expectWithin(answerOf(netPowerMeasured, { ...pot, drawnC: 94 }), 41.86 / 3000, 1e-12, "kW");
	});

	test.each([0, 1.01])("a share of %d is none", (efficiency) => {
		expect(refusalOf(netPower, { heatKw: 3, efficiency }).map((p) => p.code)).toEqual([
			"outside-limits",
		]);
	});
});

describe("fuel", () => {
	const heat = { kj: 3139.5, holdMinutes: 0, netKw: 1, efficiency: 0.2, mjPerKg: 30 };
	test.each([
		["to the boil", {}, 3139.5 / 0.2 / 30_000],
		["and 20 minutes of 1 kW", { holdMinutes: 20 }, (3139.5 + 1200) / 0.2 / 30_000],
		["only to hold it", { kj: 0, holdMinutes: 20 }, 1200 / 0.2 / 30_000],
		["all of the heat used", { efficiency: 1 }, 3139.5 / 30_000],
	])("%s, in kg", (_what, change, kg) => {
		expectWithin(answerOf(fuelQuantity, { ...heat, ...change }), kg, 1e-12, "kg");
	});

	test("electricity is counted in kWh", () => {
		expectWithin(
			answerOf(fuelQuantity, { ...heat, efficiency: 0.85, mjPerKg: null }),
			3139.5 / 0.85 / 3600,
			1e-12,
			"kWh",
		);
	});
});
