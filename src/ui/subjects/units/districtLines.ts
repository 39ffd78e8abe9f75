import type { ComputedRow, ComputedTable } from "../../../core/computedTable.ts";
import { say } from "../../../core/say.ts";
import type { unitsOrderSheet } from "../../../core/sheets/unitsOrder.ts";
import type { ItemNames } from "../../../core/units/itemNames.ts";
import { needOf } from "../../../core/units/needOf.ts";
import { amountOf } from "../../format/amountOf.ts";
import { counted } from "../../format/counted.ts";
import { waitsFor } from "../../format/waitsFor.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import { sentenceIn } from "../../state/sentenceIn.ts";
import type { HeldUnit } from "./heldUnit.ts";
import type { SaidOnce } from "./unitsNotInSums.ts";

/** One item of the district's order, as a person reads it. */
export interface DistrictLine {
	readonly item: string;
	readonly measure: string;
	readonly need: number | undefined;
	readonly inStore: number | undefined;
	/** Undefined where no unit says how much is in a pack. */
	readonly packs: number | undefined;
	readonly quantity: number | undefined;
	readonly cost: number | undefined;
	readonly orderBy: string;
	/** Units that need some. */
	readonly short: number;
	/** The units' own whole packs added up. */
	readonly unitPacks: number | undefined;
	readonly remark: string;
	readonly isUrgent: boolean;
}

/**
 * The items to order: urgent ones first; last those of which no pack is ordered.
 *
 * @param said units whose need is not known, and that the notes name already
 */
export function districtLines(
	{ rows }: ComputedTable<typeof unitsOrderSheet>,
	said: SaidOnce,
): DistrictLine[] {
	const lines = rows.map((row): DistrictLine => {
		const urgent = numberIn(row.units_run_out_first) ?? 0;
		const [item, measure] = [wordIn(row.item), wordIn(row.measure)];
		const unknown = (numberIn(row.units_unknown) ?? 0) - said(item, measure);
		return {
			item,
			measure,
			need: numberIn(row.need),
			inStore: numberIn(row.in_store),
			packs: numberIn(row.order_packs),
			quantity: numberIn(row.order_quantity),
			cost: numberIn(row.cost),
			orderBy: wordIn(row.order_by),
			short: numberIn(row.units_short) ?? 0,
			unitPacks: numberIn(row.unit_packs),
			remark: [
				urgent > 0 && runningOut(row, counted(urgent, "unit")),
				unknown > 0 &&
					say`${counted(unknown, "unit")} gave no stock or target, so nothing of theirs is in the sum.`,
				sentenceIn(row.remark),
				waitsFor(row.order_packs.outcome),
			]
				.filter(Boolean)
				.join(" "),
			isUrgent: urgent > 0,
		};
	});
	const rank = (line: DistrictLine) => (line.isUrgent ? 0 : line.packs === 0 ? 2 : 1);
	return lines.sort((one, other) => rank(one) - rank(other));
}

/** What to do today where some units run out first: an order of nothing would not say it. */
function runningOut(row: ComputedRow<typeof unitsOrderSheet>, units: string): string {
	if (numberIn(row.order_packs) !== 0)
		return say`In ${units} it runs out before an order can arrive: find some elsewhere today.`;
	return numberIn(row.need) === 0
		? say`In ${units} it runs out before an order can arrive: find some elsewhere today; what is there and on the way comes to enough, so nothing is ordered.`
		: say`In ${units} it runs out before an order can arrive: the district's store has enough, bring it today.`;
}

/** Whether nothing of an item is ordered and nobody has to do anything about it. */
export function isFolded({ packs, isUrgent }: DistrictLine): boolean {
	return packs === 0 && !isUrgent;
}

/** How many packs of how many items for how many units, in one line; what is not ordered is no urgent order. */
export function orderHeadline(units: number, lines: readonly DistrictLine[]): string {
	const ordered = lines.filter(({ packs }) => (packs ?? 0) > 0);
	const packs = ordered.reduce((sum, line) => sum + (line.packs ?? 0), 0);
	const urgent = lines.filter(({ isUrgent, packs }) => isUrgent && packs !== 0).length;
	const words = say`${counted(units, "unit")} together: ${counted(packs, "pack")} of ${counted(ordered.length, "item")}`;
	return urgent === 0 ? words : say`${words}, ${urgent} urgent`;
}

/** What ordering together saves against each unit rounding up its own packs. */
export function packsSaved(lines: readonly DistrictLine[]): string | undefined {
	const sumOf = (of: (line: DistrictLine) => number | undefined) =>
		lines.reduce((sum, line) => sum + (of(line) ?? 0), 0);
	const [alone, together] = [sumOf(({ unitPacks }) => unitPacks), sumOf(({ packs }) => packs)];
	if (alone <= together) return undefined;
	return say`Ordering each for itself, the units would take ${counted(alone, "pack")}; packs counted from the summed need, less what the district's store has, are ${counted(together, "pack")}. Opened packs then have to be shared out as listed.`;
}

/** What each unit that is short needs of an item, and how many packs of its own that is. */
export function sharesOf(
	{ item, measure }: DistrictLine,
	units: readonly HeldUnit[],
	nameOf: ItemNames,
): string[] {
	return units.flatMap(({ row, orders }) =>
		orders
			.filter((one) => nameOf(one.item) === item && one.measure === measure && needOf(one) > 0)
			.map((one) => {
				const amount = amountOf(needOf(one), measure);
				return one.order_packs === null
					? say`${row.unit}: ${amount}`
					: say`${row.unit}: ${amount}, ${counted(one.order_packs, "pack")} of its own`;
			}),
	);
}

/** What one unit needs of all items, for the list of what each gets. */
export function needsOf({ orders }: HeldUnit, nameOf: ItemNames): string[] {
	return orders
		.filter((one) => needOf(one) > 0)
		.map((one) => {
			const amount = amountOf(needOf(one), one.measure);
			return one.order_packs === null
				? say`${nameOf(one.item)}: ${amount}`
				: say`${nameOf(one.item)}: ${amount} (${counted(one.order_packs, "pack")})`;
		});
}
