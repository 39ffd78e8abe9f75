import { derive, nameFigure, typedFigure } from "../../calculation.ts";
import { measureOut, type Preparation } from "../../chlorine/measureOut.ts";
import { preparationOn } from "../../chlorine/productFigures.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { partOf } from "../../partOf.ts";
import { lotsSheet } from "../../sheets/lots.ts";
import { mixingDaysSheet } from "../../sheets/mixingDays.ts";
import type { DayFigures } from "../dayFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";

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
export function preparationCells(whole: DayFigures["preparation"]): ComputedRow {
	return {
		litres: derive(litres, { whole }),
		product_quantity: derive(quantity, { whole }),
		product_measure: derive(measure, { whole }),
		water_litres: derive(water, { whole }),
		strength_made_pct: derive(made, { whole }),
	};
}

/** One preparation a day with the product in use. */
export function mixingDaysTable(unit: UnitFigures, days: readonly DayFigures[]): ComputedTable {
	return onDemand(mixingDaysSheet, () =>
		days.map((day) => {
			const inUse = unit.productInUse;
			const lot = "row" in inUse ? preparationOn(unit.read, inUse, day.date).lot : undefined;
			const place = { file: lotsSheet.file, line: lot?.line ?? null, column: "lot" };
			return {
				date: nameFigure("Date", day.date),
				lot: lot ? typedFigure("Lot", "", lot.value.lot, place) : nameFigure("Lot", ""),
				...preparationCells(day.preparation),
			};
		}),
	);
}
