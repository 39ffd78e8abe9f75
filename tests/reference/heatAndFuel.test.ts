import { boilingOfRound } from "../../src/core/water/boilingOfRound.ts";
import { rateFromReading, rateOfPot } from "../../src/core/water/coolingMinutes.ts";
import { type FuelName, fuelData } from "../../src/core/water/fuelData.ts";
import { fuelQuantity } from "../../src/core/water/fuelQuantity.ts";
import { heatToBoil } from "../../src/core/water/heatToBoil.ts";
import { answerOf } from "../core/answerOf.ts";
import { checkCases, printed } from "./referenceCase.ts";

/** Adds to the cases of boiling.test.ts: what boils away, other heating values, thirty litres, and measured pots. */
const water = printed(
	"Specific heat 4.186 kJ/(kg·K), 1 kg/L; 1 kWh is 3.6 MJ",
	"Q = V·c·ΔT",
	"derived",
);
checkCases(
	"heat to the boil from 25 °C, in kWh",
	(
		[
			[10, 0.872],
			[30, 2.62],
		] as const
	).map(([litres, expected]) => ({
		id: `${litres} L`,
		inputs: litres,
		expected,
		tolerance: 0.01 * expected,
		unit: "kWh",
		why: "1 %: heat capacity and density vary by that much",
		source: water,
	})),
	(litres) => heatToBoil(litres, 25, 100) / 3600,
);

const stoves = printed(
	"Open clean-cooking data, technical specifications by stove",
	"efficiency and heating value",
	"derived",
);
const thirty: readonly (readonly [FuelName, number])[] = [
	["wood_three_stone", 4.9],
	["lpg", 0.41],
	["electric", 3.1],
];
checkCases(
	"fuel for 30 L from 25 °C",
	thirty.map(([fuel, expected]) => ({
		id: fuel,
		inputs: fuel,
		expected,
		tolerance: 0.02 * expected,
		unit: fuel === "electric" ? "kWh" : "kg",
		why: "two digits",
		source: stoves,
	})),
	(fuel) =>
		answerOf(fuelQuantity, {
			kj: heatToBoil(30, 25, 100),
			holdMinutes: 0,
			netKw: 1,
			...fuelData[fuel],
		}),
);

checkCases(
	"gas by another heating value",
	[
		{
			id: "10 L from 25 °C at 47.3 MJ/kg",
			inputs: 47.3,
			expected: 0.133,
			tolerance: 0.02 * 0.133,
			unit: "kg",
			why: "2 %: three digits",
			source: printed("IPCC 2006, vol. 2, table 1.2", "liquefied petroleum gas", "from memory"),
		},
	],
	(mjPerKg) =>
		answerOf(fuelQuantity, {
			kj: heatToBoil(10, 25, 100),
			holdMinutes: 0,
			netKw: 1,
			efficiency: 0.5,
			mjPerKg,
		}),
);

const evaporation = printed(
	"Latent heat of water 2,257 kJ/kg",
	"loss = heat that reaches the water × time ÷ 2,257",
	"derived",
);
checkCases(
	"boils away in 20 minutes",
	(
		[
			[0.3, 0.16],
			[0.5, 0.27],
			[1, 0.53],
		] as const
	).map(([netKw, expected]) => ({
		id: `${netKw} kW`,
		inputs: netKw,
		expected,
		tolerance: 0.03 * expected,
		unit: "kg",
		why: "3 %: two digits",
		source: evaporation,
	})),
	(netKw) => {
		const { litres, startLitres } = answerOf(boilingOfRound, {
			loads: 1,
			bucketsPerLoad: 1,
			bucketLitres: 10,
			solutionLitres: 0,
			potLitres: 10,
			pots: 1,
			netKw,
			drawnC: 25,
			boilingC: 100,
			holdMinutes: 20,
			coolMinutes: 0,
		});
		return startLitres - litres;
	},
);

const report = printed(
	"Student laboratory report",
	"studylib.net/doc/25287595, room 22.4 °C",
	"derived",
);
checkCases(
	"cooling rate of measured beakers, a minute",
	(
		[
			["100 mL, an hour", 96, 29, 60, 0.04, 0.0005],
			["300 mL, the first ten minutes", 96.4, 64.2, 10, 0.057, 0.0005],
			["300 mL, from 20 to 60 minutes", 52.1, 34.4, 40, 0.0227, 0.0001],
		] as const
	).map(([id, firstC, secondC, minutes, expected, tolerance]) => ({
		id,
		inputs: { firstC, secondC, minutes },
		expected,
		tolerance,
		unit: "per minute",
		why: "as many digits as were worked out",
		source: report,
	})),
	({ firstC, secondC, minutes }) =>
		answerOf(rateFromReading, {
			firstC,
			secondC,
			roomC: 22.4,
			hours: minutes / 60,
			potLitres: 10,
		}) / 60,
);

const kettle = printed(
	"Home brewers' reports of a lidded 40 L kettle, about 0.13 an hour",
	"scaled by volume",
	"derived",
);
checkCases(
	"cooling rate of other pots, from one of 40 L",
	(
		[
			[5, 0.26],
			[10, 0.21],
			[15, 0.18],
			[20, 0.16],
		] as const
	).map(([litres, expected]) => ({
		id: `${litres} L`,
		inputs: litres,
		expected,
		tolerance: 0.005,
		unit: "per h",
		why: "two digits",
		source: kettle,
	})),
	(litres) => rateOfPot(0.13 / rateOfPot(1, 40), litres),
);
