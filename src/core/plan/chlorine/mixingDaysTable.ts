import { nameFigure } from "../../calculation.ts";
import { type ComputedTable, onDemand } from "../../computedTable.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import { say } from "../../say.ts";
import { lotsSheet } from "../../sheets/lots.ts";
import { mixingDaysSheet } from "../../sheets/mixingDays.ts";
import type { DayFigures } from "../dayFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { isMixed } from "./litresOfPreparation.ts";
import { preparationOn } from "./lotPreparation.ts";
import { preparationCells } from "./preparationCells.ts";

/** One preparation a day with the product in use. */
export function mixingDaysTable(
	unit: UnitFigures,
	days: readonly DayFigures[],
): ComputedTable<typeof mixingDaysSheet> {
	const mixed = isMixed(unit.read) ? days : [];
	return onDemand(mixingDaysSheet, () =>
		mixed.map((day) => {
			const inUse = unit.productInUse;
			const lot = "row" in inUse ? preparationOn(unit, inUse, day.date).lot : undefined;
			return {
				date: nameFigure(say`Date`, day.date),
				lot: lot ? cellFigure(lotsSheet, lot, "lot") : nameFigure(say`Lot`, ""),
				...preparationCells(day.preparation),
			};
		}),
	);
}
