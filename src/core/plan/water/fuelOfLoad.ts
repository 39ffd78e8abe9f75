import { derive, type Figure, nameFigure } from "../../calculation.ts";
import { countTimes } from "../../countTimes.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { sources } from "../../sources.ts";
import { boilingOfRound } from "../../water/boilingOfRound.ts";
import type { Pair } from "../countFigures.ts";
import { potsAtOnce } from "./hearthFigures.ts";
import { fuelOfBoiling } from "./roundBoiling.ts";
import type { StoveFigures } from "./stoveFigures.ts";

const loads = { label: say`Loads of water boiled`, unit: say`loads` };
const ofLoad = { label: say`Fuel for one load`, unit: say`kg or kWh` };
const fuel = countTimes("fuel", say`Fuel`, say`kg or kWh`, loads, ofLoad, sources.stoves);

/** Fuel to heat and hold the water of one load. */
export function fuelOfLoad({ settings }: ReadWorkbook, stove: StoveFigures): Figure {
	const boiling = derive(boilingOfRound, {
		loads: nameFigure(say`One load`, 1),
		bucketsPerLoad: settings.rinse_buckets,
		bucketLitres: settings.bucket_fill_litres,
		potLitres: settings.pot_litres,
		pots: potsAtOnce(settings),
		netKw: stove.netKw,
		drawnC: settings.tap_water_c,
		boilingC: stove.boilingC,
		holdMinutes: stove.holdMinutes,
		// How long it cools takes no fuel.
		coolMinutes: nameFigure(say`Cooling`, 0),
	});
	return fuelOfBoiling(stove, boiling);
}

/** Fuel of a day: for the loads of water expected, and for those set aside. */
export function fuelCells(each: Figure, { mjPerKg }: StoveFigures, { expected, setAside }: Pair) {
	const isElectric = mjPerKg.outcome.ok && mjPerKg.outcome.value === null;
	return {
		fuel_expected: derive(fuel, { count: expected, each }),
		fuel_set_aside: derive(fuel, { count: setAside, each }),
		fuel_measure: nameFigure(say`Measured in`, isElectric ? "kWh" : "kg"),
	};
}
