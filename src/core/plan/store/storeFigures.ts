import { onceAsked } from "../../onceAsked.ts";
import { withCellsOnDemand } from "../../rowOnDemand.ts";
import type { IsoDate } from "../../values/date.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { type Horizon, horizon } from "./horizon.ts";
import { type ItemStock, itemStock, partsOfStock } from "./itemStock.ts";
import { type OrderBudget, orderBudget } from "./orderBudget.ts";

/** The store's look ahead, worked out when one of its sheets is first looked at. */
export interface StoreFigures {
	readonly ahead: () => Horizon;
	/** Each worked out when something of it is looked at. */
	readonly items: () => readonly ItemStock[];
	/** What of the order can be had. */
	readonly budget: () => OrderBudget;
}

export function storeFigures(unit: UnitFigures, firstDay: IsoDate): StoreFigures {
	const ahead = onceAsked(() => horizon(unit, firstDay));
	const items = onceAsked(() =>
		unit.read.tables.items.rows.map((row) =>
			withCellsOnDemand({ row }, partsOfStock, () => itemStock(unit, ahead(), row)),
		),
	);
	const budget = onceAsked(() => orderBudget(unit, ahead(), items()));
	return { ahead, items, budget };
}
