import { derive, type Figure, gather, typedFigure } from "../../calculation.ts";
import { measureOut, type Preparation } from "../../chlorine/measureOut.ts";
import type { ComputedTable } from "../../computedTable.ts";
import { partOf } from "../../partOf.ts";
import { total } from "../../quantities.ts";
import type { GoodRow } from "../../read/readTable.ts";
import { type ItemsRow, itemsSheet } from "../../sheets/items.ts";
import { supplyUseSheet } from "../../sheets/supplyUse.ts";
import type { Measure } from "../../sheets/weekTotal.ts";
import { inMeasure } from "../../stock/inMeasure.ts";
import type { DayFigures } from "../dayFigures.ts";
import type { CountFigures, Pair } from "../measureFigures.ts";
import { itemOver } from "../supplyFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { WardUse } from "../wardFigures.ts";

/** One row for each item of the store. The product in use comes from the solution, all else from usage.csv. */
export function supplyUseTable(
	unit: UnitFigures,
	days: readonly DayFigures[],
	counts: CountFigures,
	period: Record<Measure, Pair>,
	ward: readonly WardUse[],
): ComputedTable {
	const inUse = "row" in unit.productInUse ? unit.productInUse.row.value.product : undefined;
	const rows = unit.read.tables.items.rows.map((row) => {
		const { item } = row.value;
		const isProduct = inUse === item;
		const measure = cell(row, "measure", row.value.measure);
		const use = isProduct
			? productUse(days, measure, withWard(period.chlorine, ward))
			: itemOver(unit, item, counts.rounds);
		return {
			item: cell(row, "item", item),
			measure,
			expected: use.expected,
			set_aside: use.setAside,
		};
	});
	return { sheet: supplyUseSheet, rows };
}

function cell(row: GoodRow<ItemsRow>, column: "item" | "measure", text: string): Figure<string> {
	const place = { file: itemsSheet.file, line: row.line, column };
	return typedFigure(itemsSheet.columns[column].label, "", text, place);
}

const measuredIn = partOf<Preparation, "measure">(
	measureOut,
	"measure",
	"Product is measured in",
	"",
);

const withWardUse = total(
	"product_with_ward",
	"Product, with the ward's other solution",
	"mL, g or tablets",
);

/** The kits' use and the ward's: what is mixed daily for the ward is known, not uncertain. */
function withWard(kits: Pair, ward: readonly WardUse[]): Pair {
	if (ward.length === 0) return kits;
	const others = Object.fromEntries(ward.map(({ row, quantity }) => [row.value.use, quantity]));
	const added = (figure: Figure) =>
		derive(withWardUse, {
			parts: gather("Product", "mL, g or tablets", { kits: figure, ...others }),
		});
	return { expected: added(kits.expected), setAside: added(kits.setAside) };
}

function productUse(days: readonly DayFigures[], measure: Figure<string>, use: Pair): Pair {
	const from = derive(measuredIn, { whole: (days[0] as DayFigures).preparation });
	return {
		expected: derive(inMeasure, { quantity: use.expected, from, to: measure }),
		setAside: derive(inMeasure, { quantity: use.setAside, from, to: measure }),
	};
}
