import { derive, type Figure, nameFigure, refusedFigure, typedFigure } from "../../calculation.ts";
import { firstReasons } from "../../outcome.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { unsettlesRows } from "../../read/unsettlesRows.ts";
import { say } from "../../say.ts";
import type { ItemsRow } from "../../sheets/items.ts";
import { type UsageRow, usageSheet } from "../../sheets/usage.ts";
import { type Rates, ratesOfItem } from "../../stock/ratesOfItem.ts";
import type { UnitFigures } from "../unitFigures.ts";

export const usageLabel = say`What is used up`;
export const usageUnit = say`in the item's measure`;
export const noUsageLine = { file: usageSheet.file, line: null, column: "item" };
/** Where nothing goes by the piece, the kinds' lists of pieces do not matter. */
const noPieces = ({ kinds }: UnitFigures) =>
	nameFigure(
		say`Pieces in a kit of each kind`,
		kinds.map(() => 0),
	);

/**
 * The lines of some items; a line that cannot be read, of those items or of no known one, leaves them without use.
 *
 * @param isOne whether an item of the store whose row cannot be read may be one of them
 */
export function usageLines(
	unit: UnitFigures,
	wanted: (item: string) => boolean,
	rows: readonly GoodRow<UsageRow>[],
	isOne = ({ item }: Partial<ItemsRow>) => item === undefined || wanted(item),
): Figure<readonly UsageRow[]> {
	const { usage, items } = unit.read.tables;
	const place = { file: usageSheet.file, line: null, column: "quantity" };
	const bad = [
		...usage.badRows.filter(({ value }) => value.item === undefined || wanted(value.item)),
		...items.badRows.filter(({ value }) => isOne(value)),
	]
		.flatMap((row) => row.problems)
		.concat([...usage.problems, ...items.problems].filter(unsettlesRows));
	if (bad.length > 0) return refusedFigure(usageLabel, usageUnit, place, ...firstReasons(bad));
	return typedFigure(
		usageLabel,
		usageUnit,
		rows.map(({ value }) => value),
		place,
	);
}

/** How much goes each time, of what the lines say. */
export function ratesOfUsage(unit: UnitFigures, usage: Figure<readonly UsageRow[]>): Figure<Rates> {
	const byPiece = usage.outcome.ok && usage.outcome.value.some((row) => row.basis === "piece");
	return derive(ratesOfItem, {
		usage,
		workers: unit.read.settings.workers_per_round,
		loads: unit.loads,
		piecesInKits: byPiece ? unit.piecesInKits : noPieces(unit),
	});
}
