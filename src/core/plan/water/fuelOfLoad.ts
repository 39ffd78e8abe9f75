import { derive, type Figure, gather, nameFigure } from "../../calculation.ts";
import { countTimes } from "../../countTimes.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { sources } from "../../sources.ts";
import { total } from "../../total.ts";
import type { Pair } from "../countFigures.ts";
import { boilingOnStove } from "./boilingOnStove.ts";
import { fuelOfBoiling } from "./roundBoiling.ts";
import { isMixedWithBoiled, solutionWater } from "./solutionWater.ts";
import type { StoveFigures } from "./stoveFigures.ts";

const loads = { label: say`Loads of water boiled`, unit: say`loads` };
const ofLoad = { label: say`Fuel for one load`, unit: say`kg or kWh` };
const fuel = countTimes("fuel", say`Fuel`, say`kg or kWh`, loads, ofLoad, sources.stoves);

const none = nameFigure(say`Boiled water for the solution`, 0);

/** Fuel to heat and hold the water of one load. */
export function fuelOfLoad(read: ReadWorkbook, stove: StoveFigures): Figure {
	return fuelOf(read, stove, nameFigure(say`One load`, 1), none);
}

/** Fuel to heat and hold the water of one preparation of the solution; undefined where none is boiled for it. */
export function fuelOfSolution(read: ReadWorkbook, stove: StoveFigures): Figure | undefined {
	if (!isMixedWithBoiled(read)) return undefined;
	return fuelOf(read, stove, nameFigure(say`Loads`, 0), solutionWater(read));
}

function fuelOf(
	read: ReadWorkbook,
	stove: StoveFigures,
	loads: Figure,
	solutionLitres: Figure,
): Figure {
	// How long it cools takes no fuel.
	const coolMinutes = nameFigure(say`Cooling`, 0);
	return fuelOfBoiling(stove, boilingOnStove(read, stove, { loads, solutionLitres, coolMinutes }));
}

const ofAll = total("fuel_of_all_loads", say`Fuel`, say`kg or kWh`);

/** Fuel of a day: for the loads expected, and for those set aside. @param parts loads, or preparations, that take as much fuel each */
export function fuelCells(
	{ mjPerKg }: StoveFigures,
	parts: readonly { readonly each: Figure; readonly loads: Pair }[],
) {
	const over = (part: keyof Pair) => {
		const each = parts.map((of) => derive(fuel, { count: of.loads[part], each: of.each }));
		const [only] = each;
		if (only && each.length === 1) return only;
		return derive(ofAll, {
			parts: gather(say`Fuel`, say`kg or kWh`, Object.fromEntries(each.entries())),
		});
	};
	const isElectric = mjPerKg.outcome.ok && mjPerKg.outcome.value === null;
	return {
		fuel_expected: over("expected"),
		fuel_set_aside: over("setAside"),
		fuel_measure: nameFigure(say`Measured in`, isElectric ? "kWh" : "kg"),
	};
}
