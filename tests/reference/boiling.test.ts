import { expect, test } from "vitest";
import { boilingPoint } from "../../src/core/water/boilingPoint.ts";
import { coolingMinutes, rateFromReading, rateOfPot } from "../../src/core/water/coolingMinutes.ts";
import { type FuelName, fuelData } from "../../src/core/water/fuelData.ts";
import { fuelQuantity } from "../../src/core/water/fuelQuantity.ts";
import { heatToBoil } from "../../src/core/water/heatToBoil.ts";
import { answerOf, refusalOf } from "../core/answerOf.ts";
import { checkCases, printed, type ReferenceCase } from "./referenceCase.ts";

const formula = printed(
	"Standard atmosphere and the Antoine equation for water; constants from memory",
	"table",
	"derived",
);
const page = printed("Public page of boiling points by height", "answers.mindstick.com 100598");
const heights: readonly (readonly [number, number])[] = [
	[0, 100],
	[500, 98.3],
	[1000, 96.7],
	[1500, 95],
	[2000, 93.4],
	[2500, 91.7],
	[3000, 90],
	[3500, 88.4],
	[4000, 86.7],
	[5500, 81.6],
];
const seen: readonly (readonly [number, number])[] = [
	[1000, 96.5],
	[2000, 93.1],
	[3000, 89.8],
	[4000, 86.5],
];
checkCases(
	"boiling point",
	[
		...heights.map(
			([altitudeM, expected]): ReferenceCase<{ altitudeM: number }> => ({
				id: `${altitudeM} m`,
				inputs: { altitudeM },
				expected,
				tolerance: 0.06,
				unit: "°C",
				why: "worked out to one decimal",
				source: formula,
			}),
		),
		...seen.map(
			([altitudeM, expected]): ReferenceCase<{ altitudeM: number }> => ({
				id: `${altitudeM} m, page`,
				inputs: { altitudeM },
				expected,
				tolerance: 0.4,
				unit: "°C",
				why: "another air pressure by height; agrees within 0.3 °C",
				source: page,
			}),
		),
	],
	(inputs) => answerOf(boilingPoint, inputs),
);

const water = printed(
	"Specific heat of water 4.186 kJ/(kg·K), 1 kg/L",
	"definition of the heat",
	"derived",
);
checkCases(
	"heat to the boil",
	[
		{
			id: "10 L from 25 °C",
			inputs: 10,
			expected: 3140,
			tolerance: 31,
			unit: "kJ",
			why: "1 %: heat capacity and density vary by that much",
			source: water,
		},
		{
			id: "30 L from 25 °C",
			inputs: 30,
			expected: 9420,
			tolerance: 94,
			unit: "kJ",
			why: "1 %: heat capacity and density vary by that much",
			source: water,
		},
	],
	(litres) => heatToBoil(litres, 25, 100),
);

const stoves = printed(
	"Open clean-cooking data, technical specifications by stove",
	"efficiency and heating value",
	"derived",
);
const fuels: readonly (readonly [FuelName, number])[] = [
	["wood_three_stone", 1.64],
	["wood_improved", 0.65],
	["charcoal_traditional", 0.523],
	["charcoal_improved", 0.349],
	["kerosene", 0.209],
	["lpg", 0.138],
	["electric", 1.03],
];
checkCases(
	"fuel for 10 L from 25 °C",
	fuels.map(([fuel, expected]) => ({
		id: fuel,
		inputs: fuel,
		expected,
		tolerance: 0.02 * expected,
		unit: fuel === "electric" ? "kWh" : "kg",
		why: "2 %: two or three digits",
		source: stoves,
	})),
	(fuel) =>
		answerOf(fuelQuantity, {
			kj: heatToBoil(10, 25, 100),
			holdMinutes: 0,
			netKw: 1,
			...fuelData[fuel],
		}),
);

const newton = printed(
	"Newton's law of cooling",
	"t = ln((T₀ − room) ÷ (T − room)) ÷ k",
	"derived",
);
checkCases(
	"cooling of a covered 10 L pot in a room of 25 °C",
	(
		[
			[37, 7.3],
			[30, 10.8],
			[52.6, 4],
		] as const
	).map(([toC, expected]) => ({
		id: `to ${toC} °C`,
		inputs: toC,
		expected,
		tolerance: 0.05,
		unit: "h",
		why: "worked out to one decimal",
		source: newton,
	})),
	(toC) =>
		answerOf(coolingMinutes, { fromC: 100, toC, roomC: 25, coolingPerHour: 0.25, potLitres: 10 }) /
		60,
);
checkCases(
	"cooling rate from a reading",
	[
		{
			id: "96.4 to 34.4 °C in an hour, room 22.4 °C",
			inputs: 1,
			expected: 0.0303,
			tolerance: 0.0003,
			unit: "per minute",
			why: "three digits",
			source: printed("Student laboratory report", "studylib.net/doc/25287595; 300 mL", "derived"),
		},
	],
	(hours) =>
		answerOf(rateFromReading, { firstC: 96.4, secondC: 34.4, roomC: 22.4, hours, potLitres: 10 }) /
		60,
);

test("a reading and the pot it was taken in give the same cooling again", () => {
	const reading = { firstC: 96, secondC: 60, roomC: 25, hours: 2, potLitres: 20 };
	const rate = answerOf(rateFromReading, reading);
	const minutes = answerOf(coolingMinutes, {
		fromC: 96,
		toC: 60,
		roomC: 25,
		coolingPerHour: rate,
		potLitres: 20,
	});
	expect(Math.abs(minutes - 120)).toBeLessThan(1e-9);
	expect(rateOfPot(0.25, 80)).toBe(0.125);
});

test.each([
	["as warm as wanted", 37],
	["warmer", 40],
])("a room %s has no answer", (_what, roomC) => {
	const inputs = { fromC: 100, toC: 37, roomC, coolingPerHour: 0.25, potLitres: 10 };
	expect(refusalOf(coolingMinutes, inputs)).toMatchObject([
		{ code: "room-too-warm", file: "unit.csv", column: "room_c" },
	]);
});
