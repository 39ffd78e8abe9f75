import type { Figure } from "../../calculation.ts";
import { type ComputedTable, onDemand } from "../../computedTable.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { RoundsOfDay } from "../../rounds/roundsOfDay.ts";
import { rowOnDemand } from "../../rowOnDemand.ts";
import { itemsSheet } from "../../sheets/items.ts";
import type { Measure } from "../../sheets/planMeasures.ts";
import { supplyUseSheet } from "../../sheets/supplyUse.ts";
import { productUse } from "../chlorine/productUse.ts";
import type { WardUse } from "../chlorine/wardUses.ts";
import type { Pair } from "../countFigures.ts";
import type { DayFigures } from "../dayFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { itemIfKnown } from "./useOfItem.ts";

/** One row for each item of the store. The product in use comes from the solution, all else from usage.csv, and a piece for single use for each kit used. */
export function supplyUseTable(
	unit: UnitFigures,
	days: readonly DayFigures[],
	rounds: Figure<RoundsOfDay[]>,
	period: Record<Measure, Pair>,
	ward: readonly WardUse[],
): ComputedTable<typeof supplyUseSheet> {
	const inUse = "row" in unit.productInUse ? unit.productInUse.row.value.product : undefined;
	return onDemand(supplyUseSheet, () =>
		unit.read.tables.items.rows.map((row) =>
			rowOnDemand(supplyUseSheet, () => {
				const { item } = row.value;
				const isProduct = inUse === item;
				const measure = cellFigure(itemsSheet, row, "measure");
				const use = isProduct
					? productUse((days[0] as DayFigures).preparation, measure, period.chlorine, ward)
					: itemIfKnown(unit, item, { rounds, days }, unit.read.settings.plan_confidence);
				return {
					item: cellFigure(itemsSheet, row, "item"),
					measure,
					expected: use.expected,
					set_aside: use.setAside,
				};
			}),
		),
	);
}
