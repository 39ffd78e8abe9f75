import { derive, type Figure } from "../../calculation.ts";
import { type FireOfLoad, fireOfLoad } from "../../methods/fireOfLoad.ts";
import { partOf } from "../../partOf.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { fuelQuantity } from "../../water/fuelQuantity.ts";
import { stoveFigures } from "../water/stoveFigures.ts";

/** The fire under one load of pieces, and the fuel it takes. */
export interface PieceFire {
	readonly fire: Figure<FireOfLoad>;
	/** kg, or kWh of electricity. */
	readonly fuel: Figure;
	readonly fuelMeasure: "kg" | "kWh";
}

const heat = partOf<FireOfLoad, "kj">(
	fireOfLoad,
	"kj",
	say`Heat to bring the water to the boil`,
	"kJ",
);
const held = partOf<FireOfLoad, "holdMinutes">(
	fireOfLoad,
	"holdMinutes",
	say`Kept at the boil`,
	"min",
);

/** A load that is boiled or steamed, on the unit's own stove. */
export function pieceFire(read: ReadWorkbook, method: "boiling" | "steam"): PieceFire {
	const { settings } = read;
	const { netKw, boilingC, efficiency, mjPerKg } = stoveFigures(read);
	const isBoiled = method === "boiling";
	const fire = derive(fireOfLoad, {
		litres: isBoiled ? settings.disinfect_boil_litres : settings.steam_litres,
		holdMinutes: isBoiled ? settings.disinfect_boil_minutes : settings.steam_minutes,
		potLitres: settings.pot_litres,
		netKw,
		drawnC: settings.tap_water_c,
		boilingC,
	});
	return {
		fire,
		fuel: derive(fuelQuantity, {
			kj: derive(heat, { whole: fire }),
			holdMinutes: derive(held, { whole: fire }),
			netKw,
			efficiency,
			mjPerKg,
		}),
		fuelMeasure: mjPerKg.outcome.ok && mjPerKg.outcome.value === null ? "kWh" : "kg",
	};
}
