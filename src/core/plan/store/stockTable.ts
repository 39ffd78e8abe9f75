import { atMost } from "../../atMost.ts";
import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import { say } from "../../say.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { type LotsRow, lotsSheet } from "../../sheets/lots.ts";
import { stockSheet } from "../../sheets/stock.ts";
import { definition } from "../../source.ts";
import { sources } from "../../sources.ts";
import { booksAfter, type OnHandInputs, onHandInputs } from "../../stock/onHand.ts";
import type { Projection } from "../../stock/projection.ts";
import { daysFrom, type IsoDate } from "../../values/date.ts";
import { type LotFigures, lotFigures, NOT_USABLE, usableUntil } from "../chlorine/lotFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { lastCountOf } from "./countAge.ts";
import type { ItemStock } from "./itemStock.ts";
import { isComing, isOverdue, type LotOnHand, lotsOnHand } from "./lotsOnHand.ts";

/** Every lot of the store, as the journal leaves it. */
export function stockTable(
	unit: UnitFigures,
	items: () => readonly ItemStock[],
	firstDay: IsoDate,
): ComputedTable<typeof stockSheet> {
	return onDemand(stockSheet, () => {
		const ofProducts = new Map(lotFigures(unit, firstDay).map((lot) => [lot.lot.line, lot]));
		const byName = new Map(
			items()
				.toReversed()
				.map((item) => [item.row.value.item, item]),
		);
		return lotsOnHand(unit.read).map((lot) => {
			const { line, value } = lot.row;
			return rowOf(
				lot,
				byName.get(value.item),
				untilOf(ofProducts.get(line), value, firstDay),
				firstDay,
			);
		});
	});
}

const countsAgainstBooks = calculation<OnHandInputs, string>({
	key: "counted_difference",
	label: say`Counts against books`,
	unit: say`in the item's measure`,
	formula: say`What the counts found more (+) or less (−) than the books held by then, added up; blank without a count.`,
	source: definition,
	inputs: onHandInputs,
	example: {
		inputs: { listed: 10, entries: [{ day: "2027-02-03", entry: "count", quantity: 8.5 }] },
		result: "-1.5",
		within: 0,
	},
	compute: ({ listed, entries }) => {
		const { lastCount, counted } = booksAfter(listed, entries);
		return lastCount ? signed(counted) : "";
	},
});

const countItAgain = calculation<OnHandInputs, string>({
	key: "stock_remark",
	label: say`Remark`,
	unit: "",
	formula: say`Said where more was issued or lost since the last count than the books held.`,
	source: definition,
	inputs: onHandInputs,
	example: {
		inputs: { listed: 10, entries: [{ day: "2027-02-03", entry: "issue", quantity: 8 }] },
		result: "",
		within: 0,
	},
	compute: ({ listed, entries }) => {
		const { short } = booksAfter(listed, entries);
		return short > 0
			? say`${atMost(short, 3)} more went out than the books held: count this lot.`
			: "";
	},
});

const wastedOf = calculation<{ projection: Projection; lot: string }, number>({
	key: "wasted",
	label: say`Will go to waste`,
	unit: say`in the item's measure`,
	formula: say`What of the lot is not used by its last day, the lot that expires first leaving first.`,
	source: sources.firstExpiredFirstOut,
	inputs: {
		projection: { label: say`Stock day by day`, unit: say`in the item's measure` },
		lot: { label: say`Lot`, unit: "" },
	},
	example: {
		inputs: {
			projection: {
				stock: [30, 0],
				runOut: null,
				waste: [{ lot: "L1", day: 1, quantity: 25, why: "out of date" }],
			},
			lot: "L1",
		},
		result: 25,
		within: 0,
	},
	compute: ({ projection, lot }) =>
		projection.waste.find((waste) => waste.lot === lot)?.quantity ?? 0,
});

/** @param item the lot's, where the store lists it */
function rowOf(
	of: LotOnHand,
	item: ItemStock | undefined,
	until: Figure<string>,
	firstDay: IsoDate,
): ComputedRow<typeof stockSheet> {
	const { row, onHand, entries } = of;
	const listed = cellFigure(lotsSheet, row, "quantity");
	const lot = cellFigure(lotsSheet, row, "lot");
	const counted = isComing(of) ? undefined : lastCountOf(of);
	return {
		item: cellFigure(lotsSheet, row, "item"),
		lot,
		measure: item ? cellFigure(itemsSheet, item.row, "measure") : nameFigure(say`Measure`, ""),
		on_hand: onHand,
		counted_difference: derive(countsAgainstBooks, { listed, entries }),
		usable_until: until,
		wasted: item
			? derive(wastedOf, { projection: item.projection, lot })
			: nameFigure(say`Will go to waste`, 0),
		remark: isComing(of)
			? nameFigure(say`Remark`, comingWords(isOverdue(of, firstDay), of.row.value.arrives_on ?? ""))
			: derive(countItAgain, { listed, entries }),
		last_counted: nameFigure(say`Last counted`, counted ?? ""),
		counted_days_ago: nameFigure(
			say`Counted before the first day`,
			counted === undefined ? null : Math.max(0, daysFrom(counted, firstDay)),
		),
	};
}

/** @param lot undefined where it is of no chlorine product: then it can be used until its last day */
function untilOf(
	lot: LotFigures | undefined,
	{ expires_on: expires }: LotsRow,
	firstDay: IsoDate,
): Figure<string> {
	if (!lot) return nameFigure(say`Usable until`, expires ?? "");
	const { lastUsableDay: last } = lot;
	return usableUntil(lot, firstDay, last === undefined ? NOT_USABLE : (last ?? expires ?? ""));
}

function comingWords(isLate: boolean, day: IsoDate): string {
	return isLate
		? say`On the way; was to arrive on ${day} and has not been received.`
		: say`On the way; arrives on ${day}.`;
}

/** A difference with its sign, as other programs read a number; with a point, as files have it in every language. */
export function signed(difference: number): string {
	const size = Number(Math.abs(difference).toFixed(3));
	if (size === 0) return "0";
	return `${difference < 0 ? "-" : "+"}${size}`;
}
