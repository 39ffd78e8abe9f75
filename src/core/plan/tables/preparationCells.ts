import { derive, type Figure } from "../../calculation.ts";
import { measureOut, type Preparation } from "../../chlorine/measureOut.ts";
import type { ComputedRow } from "../../computedTable.ts";
import { partOf } from "../../partOf.ts";

const litres = partOf<Preparation, "litres">(measureOut, "litres", "Make up to", "L");
const quantity = partOf<Preparation, "quantity">(
	measureOut,
	"quantity",
	"Product to measure",
	"mL, g or tablets",
);
const measure = partOf<Preparation, "measure">(measureOut, "measure", "Measured in", "");
const water = partOf<Preparation, "waterLitres">(measureOut, "waterLitres", "Water", "L");
const made = partOf<Preparation, "strengthMadePct">(
	measureOut,
	"strengthMadePct",
	"Strength made",
	"%",
);

/** The cells of a preparation that a mixing sheet shows. */
export function preparationCells(whole: Figure<Preparation>): ComputedRow {
	return {
		litres: derive(litres, { whole }),
		product_quantity: derive(quantity, { whole }),
		product_measure: derive(measure, { whole }),
		water_litres: derive(water, { whole }),
		strength_made_pct: derive(made, { whole }),
	};
}
