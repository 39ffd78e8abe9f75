import { defaultFigure, derive, type Figure } from "../../calculation.ts";
import { valueIn } from "../../outcome.ts";
import type { Settings } from "../../read/readSettings.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { boilingPoint } from "../../water/boilingPoint.ts";
import { coolingMinutes, rateFromReading } from "../../water/coolingMinutes.ts";
import { type Fuel, fuelData } from "../../water/fuelData.ts";
import { holdAtBoil } from "../../water/holdAtBoil.ts";
import { netPower, netPowerMeasured } from "../../water/netPower.ts";

/** What holds for every pot of water the unit boils. */
export interface StoveFigures {
	readonly boilingC: Figure;
	/** As the unit has set it; where that is blank, by its height above the sea. */
	readonly holdMinutes: Figure;
	readonly netKw: Figure;
	readonly efficiency: Figure;
	readonly coolMinutes: Figure;
	/** MJ/kg, null for electricity. */
	readonly mjPerKg: Figure<number | null>;
}

export function stoveFigures({ settings }: ReadWorkbook): StoveFigures {
	const fuel: Fuel = fuelData[valueIn(settings.fuel) ?? "charcoal_traditional"];
	const place = { file: "unit.csv", line: null, column: "fuel" };
	const given = settings.stove_efficiency;
	const efficiency = isBlank(given)
		? defaultFigure(given.label, given.unit, fuel.efficiency, place)
		: (given as Figure);
	const boilingC = derive(boilingPoint, { altitudeM: settings.altitude_m });
	const ownHold = settings.boil_hold_minutes;
	return {
		boilingC,
		holdMinutes: isBlank(ownHold)
			? derive(holdAtBoil, { altitudeM: settings.altitude_m })
			: ownHold,
		efficiency,
		netKw: netKwOf(settings, fuel, boilingC, efficiency),
		coolMinutes: derive(coolingMinutes, {
			fromC: boilingC,
			toC: settings.rinse_below_c,
			roomC: settings.room_c,
			coolingPerHour: coolingRate(settings),
			potLitres: settings.pot_litres,
		}),
		mjPerKg: defaultFigure(say`Heating value of the fuel`, "MJ/kg", fuel.mjPerKg, place),
	};
}

/** From a pot that was measured; else from the heat that was entered, or an estimate for the fuel. */
function netKwOf(settings: Settings, fuel: Fuel, boilingC: Figure, efficiency: Figure): Figure {
	const { boil_minutes_measured: minutes, heat_kw: heat } = settings;
	if (!isBlank(minutes))
		return derive(netPowerMeasured, {
			potLitres: settings.pot_litres,
			drawnC: settings.tap_water_c,
			boilingC,
			minutes,
		});
	const estimated = defaultFigure(heat.label, heat.unit, fuel.heatKw, {
		file: "unit.csv",
		line: null,
		column: "heat_kw",
	});
	return derive(netPower, { heatKw: isBlank(heat) ? estimated : heat, efficiency });
}

/** The unit's own reading of a pot where one was taken, else the rate in the settings. */
function coolingRate(settings: Settings): Figure {
	const { cooling_first_c: firstC, cooling_second_c: secondC, cooling_hours: hours } = settings;
	if ([firstC, secondC, hours].every(isBlank)) return settings.cooling_per_hour;
	const { room_c: roomC, pot_litres: potLitres } = settings;
	return derive(
		rateFromReading,
		{ firstC, secondC, hours, roomC, potLitres },
		{ file: "unit.csv", line: null, column: "cooling_first_c" },
	);
}

/** Nothing was typed; something typed that cannot be read is not blank. */
export function isBlank({ outcome }: Figure<unknown>): boolean {
	return !outcome.ok && outcome.problems[0]?.code === "not-given";
}
