import type { ComputedTable } from "../../../core/computedTable.ts";
import { problemsOf } from "../../../core/outcome.ts";
import { say } from "../../../core/say.ts";
import type { combinedOrderSheet } from "../../../core/sheets/combinedOrder.ts";
import { RUNS_OUT_FIRST, type UnitOrder } from "../../../core/units/combineOrders.ts";
import { counted } from "../../format/counted.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";

/** One item of the combined list, as a person reads it. */
export interface CombinedLine {
	readonly item: string;
	readonly measure: string;
	readonly need: number | undefined;
	/** Undefined where no unit says how much is in a pack. */
	readonly packs: number | undefined;
	readonly quantity: number | undefined;
	readonly cost: number | undefined;
	readonly orderBy: string;
	readonly units: number;
	/** What each unit that is short needs. */
	readonly shares: readonly string[];
	readonly remark: string;
	readonly isUrgent: boolean;
}

/** The items of the list: urgent ones first, then those to order, then the rest. */
export function combinedLines({ rows }: ComputedTable<typeof combinedOrderSheet>): CombinedLine[] {
	const lines = rows.map((row): CombinedLine => {
		const waits = row.order_packs ? problemsOf(row.order_packs.outcome)[0]?.message : undefined;
		const remark = wordIn(row.remark);
		return {
			item: wordIn(row.item),
			measure: wordIn(row.measure),
			need: numberIn(row.need),
			packs: numberIn(row.order_packs),
			quantity: numberIn(row.order_quantity),
			cost: numberIn(row.cost),
			orderBy: wordIn(row.order_by),
			units: numberIn(row.units) ?? 0,
			shares: wordIn(row.split).split("; ").filter(Boolean),
			remark: [remark, waits].filter(Boolean).join(" "),
			isUrgent: remark.includes(RUNS_OUT_FIRST),
		};
	});
	const rank = (line: CombinedLine) => (line.isUrgent ? 0 : line.packs === 0 ? 2 : 1);
	return lines.sort((a, b) => rank(a) - rank(b));
}

/** How many packs of how many items for how many units, in one line. */
export function combinedHeadline(
	orders: readonly UnitOrder[],
	lines: readonly CombinedLine[],
): string {
	if (orders.length === 0) return say`Several units' orders as one`;
	const ordered = lines.filter((line) => (line.packs ?? 0) > 0);
	const packs = ordered.reduce((sum, line) => sum + (line.packs ?? 0), 0);
	const urgent = lines.filter((line) => line.isUrgent).length;
	const words = say`${counted(orders.length, "unit")} together: ${counted(packs, "pack")} of ${counted(ordered.length, "item")}`;
	return urgent === 0 ? words : say`${words}, ${urgent} urgent`;
}

/** What ordering together saves against each unit rounding up its own packs. */
export function packsSaved(
	orders: readonly UnitOrder[],
	lines: readonly CombinedLine[],
): string | undefined {
	const alone = orders.reduce(
		(sum, { rows }) => rows.rows.reduce((all, row) => all + (row.value.order_packs ?? 0), sum),
		0,
	);
	const together = lines.reduce((sum, line) => sum + (line.packs ?? 0), 0);
	if (orders.length < 2 || alone <= together) return undefined;
	return say`Ordering each for itself, the units would take ${counted(alone, "pack")}; packs counted from the summed need are ${counted(together, "pack")}. Opened packs then have to be shared out as listed.`;
}
