import { calculation, derive, nameFigure } from "../../calculation.ts";
import { cellFigure, givenFigure } from "../../read/cellFigure.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { say } from "../../say.ts";
import { type ItemsRow, itemsSheet } from "../../sheets/items.ts";
import type { Measure } from "../../sheets/planMeasures.ts";
import { definition } from "../../source.ts";
import { inMeasure } from "../../stock/inMeasure.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { PriceEach } from "./safetyRow.ts";

const priceOfOne = calculation<{ price: number; packSize: number; share: number }, number>({
	key: "price_of_one",
	label: say`Price of one`,
	unit: say`currency`,
	formula: say`Price of a pack ÷ pack size × what one is in the measure of the store.`,
	source: definition,
	inputs: {
		price: { label: say`Price of a pack`, unit: say`currency`, min: 0 },
		packSize: { label: say`Pack size`, unit: say`in the item's measure`, min: 1e-9 },
		share: { label: say`One, in the measure of the store`, unit: say`in the item's measure` },
	},
	// A litre of a bottle of 1,000 mL for 1.20.
	example: { inputs: { price: 1.2, packSize: 1000, share: 1000 }, result: 1.2, within: 1e-12 },
	compute: ({ price, packSize, share }) => (price / packSize) * share,
});

/** Price of one of a measure's things, where one item of the store is what is set aside; undefined elsewhere. @param measured how the product in use is measured out */
export function priceEach(unit: UnitFigures, measure: Measure, measured: string): PriceEach {
	const { productInUse: inUse } = unit;
	if (measure === "chlorine")
		return "row" in inUse ? priceIn(only(unit, inUse.row.value.product), measured) : undefined;
	if (measure === "vinegar_litres") return priceIn(vinegar(unit), "L");
	if (measure !== "gauze_pieces") return undefined;
	const gauze = unit.read.tables.items.rows.filter(({ value }) => value.group === "gauze");
	return gauze.length === 1 ? priceOf(gauze[0] as GoodRow<ItemsRow>) : undefined;
}

/** Price of one of an item's own measure. */
export function priceOf(row: GoodRow<ItemsRow>): PriceEach {
	return priceIn(row, row.value.measure);
}

function only({ read }: UnitFigures, item: string): GoodRow<ItemsRow> | undefined {
	return read.tables.items.rows.find(({ value }) => value.item === item);
}

/** The one liquid that goes by descalings. */
function vinegar(unit: UnitFigures): GoodRow<ItemsRow> | undefined {
	const { usage, items } = unit.read.tables;
	const used = new Set(
		usage.rows.filter(({ value }) => value.basis === "descale").map(({ value }) => value.item),
	);
	const liquids = items.rows.filter(
		({ value }) => used.has(value.item) && shareOf("L", value.measure) !== undefined,
	);
	return liquids.length === 1 ? liquids[0] : undefined;
}

function priceIn(row: GoodRow<ItemsRow> | undefined, measure: string): PriceEach {
	const price = row && givenFigure(itemsSheet, row, "pack_price");
	const share = row && shareOf(measure, row.value.measure);
	if (!price || share === undefined) return undefined;
	return derive(priceOfOne, {
		price,
		packSize: cellFigure(itemsSheet, row, "pack_size"),
		share: nameFigure(say`One, in the measure of the store`, share),
	});
}

function shareOf(from: string, to: string): number | undefined {
	if (from === to) return 1;
	const share = inMeasure.compute({ quantity: 1, from, to });
	return typeof share === "number" ? share : undefined;
}
