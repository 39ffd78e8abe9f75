import { derive, type Figure, nameFigure } from "../../calculation.ts";
import { lotRemark } from "../../chlorine/lotRemark.ts";
import { measureOut, type Preparation } from "../../chlorine/measureOut.ts";
import { partOf } from "../../partOf.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { inMeasure } from "../../stock/inMeasure.ts";
import { lotsOnHand } from "../store/lotsOnHand.ts";
import { isOfUnknownAge } from "./isOfUnknownAge.ts";
import type { LotPreparation } from "./lotPreparation.ts";
import type { ProductFigures } from "./productFigures.ts";

const { left: leftInput, assumedAgeDays } = lotRemark.inputs;
const NOTHING = nameFigure(leftInput.label, null);

const measuredIn = partOf<Preparation, "measure">(
	measureOut,
	"measure",
	say`Product is measured in`,
	"",
);

/** What to know of the lot that one preparation is measured out from. @param next the lot to use after it */
export function remarkOnLot(
	read: ReadWorkbook,
	product: ProductFigures,
	{ lot, preparation }: LotPreparation,
	next: LotPreparation | undefined,
): Figure<string> {
	const isAssumed = lot !== undefined && isOfUnknownAge(product.row.value, lot.value);
	return derive(lotRemark, {
		preparation,
		left: lot ? leftOf(read, lot, preparation) : NOTHING,
		nextLot: nameFigure(say`Next lot`, next?.lot?.value.lot ?? ""),
		assumedAgeDays: isAssumed
			? read.settings.assumed_age_days
			: nameFigure(assumedAgeDays.label, null),
	});
}

/** What is left of a lot, as the product is measured out; no number where the store counts it otherwise. */
function leftOf(
	read: ReadWorkbook,
	lot: NonNullable<LotPreparation["lot"]>,
	preparation: Figure<Preparation>,
): Figure<number | null> {
	const item = read.tables.items.rows.find(({ value }) => value.item === lot.value.item);
	const onHand = lotsOnHand(read).find(({ row }) => row === lot)?.onHand;
	if (!item || !onHand) return NOTHING;
	const left = derive(inMeasure, {
		quantity: onHand,
		from: cellFigure(itemsSheet, item, "measure"),
		to: derive(measuredIn, { whole: preparation }),
	});
	return left.outcome.ok ? left : NOTHING;
}
