import { derive, type Figure } from "../../calculation.ts";
import { measureOut, type Preparation } from "../../chlorine/measureOut.ts";
import type { FiguresOf } from "../../computedTable.ts";
import { partOf } from "../../partOf.ts";
import { say } from "../../say.ts";
import type { preparationColumns } from "../../sheets/preparationColumns.ts";

const litres = partOf<Preparation, "litres">(measureOut, "litres", say`Make up to`, "L");
const quantity = partOf<Preparation, "quantity">(
	measureOut,
	"quantity",
	say`Product to measure`,
	say`mL, g or tablets`,
);
const measure = partOf<Preparation, "measure">(measureOut, "measure", say`Measured in`, "");
const water = partOf<Preparation, "waterLitres">(measureOut, "waterLitres", say`Water`, "L");
const made = partOf<Preparation, "strengthMadePct">(
	measureOut,
	"strengthMadePct",
	say`Strength made`,
	"%",
);

/** The cells of a preparation that a mixing sheet shows. */
export function preparationCells(whole: Figure<Preparation>): FiguresOf<typeof preparationColumns> {
	return {
		litres: derive(litres, { whole }),
		product_quantity: derive(quantity, { whole }),
		product_measure: derive(measure, { whole }),
		water_litres: derive(water, { whole }),
		strength_made_pct: derive(made, { whole }),
	};
}
