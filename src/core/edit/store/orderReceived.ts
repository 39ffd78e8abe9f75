import { say } from "../../say.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { placedSheet } from "../../sheets/placed.ts";
import { number } from "../../values/number.ts";
import type { Workbook } from "../../workbook.ts";
import { wrongFor } from "../notAllowed.ts";
import { withRow } from "../withRow.ts";
import { type Done, entered } from "./entered.ts";
import { orderOnTheWay, withOrder } from "./orderOnTheWay.ts";
import { storeBooks } from "./storeBooks.ts";
import type { WrongField } from "./storeEntry.ts";

/** What came of an order, as typed. */
export interface Delivery {
	/** Line of the order in its file. */
	readonly line: number;
	readonly packs: string;
	readonly day: string;
	readonly lot: string;
	readonly made: string;
	readonly expires: string;
	/** Whether packs that did not come are still to come; else the order ends here. */
	readonly restToCome: boolean;
}

/** The workbook after a delivery and what it came to, or what keeps it from being written. */
export type Received =
	| {
			readonly ok: true;
			readonly workbook: Workbook;
			readonly done: Done;
			/** In the item's measure. */
			readonly quantity: number;
	  }
	| { readonly ok: false; readonly wrong: readonly WrongField[] };

/** Decimals of packs × pack size, which carries the rounding error of multiplying. */
const DECIMALS = 6;

const cameOf = {
	label: placedSheet.columns.packs_received.label,
	value: number({ min: 0.000001, max: 1_000_000 }),
};

/**
 * Writes that an order came, in one step: its line says when and how many packs, and what
 * came is a lot of the store; of a lot that is there already, a receipt in the journal.
 *
 * @example 3 packs of 100 as a new lot → a lot of 300
 */
export function orderReceived(workbook: Workbook, delivery: Delivery): Received {
	const { line, packs, day } = delivery;
	const order = orderOnTheWay(workbook, line);
	if (!order) return refused({ field: "item", words: GONE });
	const { item, ordered_on: ordered } = order.value;
	const books = storeBooks(workbook);
	const listed = books.items.rows.find(({ value }) => value.item === item);
	if (!listed) return refused({ field: "item", words: unlisted(item) });
	const wrongPacks = wrongFor(cameOf, packs);
	if (wrongPacks !== undefined) return refused({ field: "quantity", words: wrongPacks });
	if (wrongFor(placedSheet.columns.ordered_on, day) === undefined && day.trim() < ordered)
		return refused({ field: "day", words: tooEarly(day, ordered) });
	const came = cameOf.value.schema.parse(packs);
	const quantity = Number((came * listed.value.pack_size).toFixed(DECIMALS));
	const lot = delivery.lot.trim();
	const isNew = !books.lots.rows.some(({ value }) => value.item === item && value.lot === lot);
	const inBooks = entered(workbook, {
		kind: "receipt",
		item,
		lot,
		isNew,
		day,
		quantity: String(quantity),
		note: "",
		expires: delivery.expires,
		made: delivery.made,
	});
	if (!inBooks.ok) return inBooks;
	const written = withOrder(inBooks.workbook, line, {
		received_on: day.trim(),
		packs_received: packs.trim(),
		lot,
	});
	const rest = Number((order.value.packs - came).toFixed(DECIMALS));
	const next =
		delivery.restToCome && rest > 0
			? withRow(written, placedSheet.file, {
					ordered_on: ordered,
					item,
					packs: String(rest),
					expected_on: order.value.expected_on ?? "",
				})
			: written;
	return { ok: true, workbook: next, done: inBooks.done, quantity };
}

const GONE = say`This order is no longer on the way: it came, or it was given up.`;

function refused(wrong: WrongField): Received {
	return { ok: false, wrong: [wrong] };
}

function unlisted(item: string): string {
	return say`${item} is not listed in ${itemsSheet.file}: list it with its pack size first.`;
}

function tooEarly(day: string, ordered: string): string {
	return say`${day} is before the order was placed, on ${ordered}.`;
}
