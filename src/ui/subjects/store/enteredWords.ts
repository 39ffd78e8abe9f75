import type { Done } from "../../../core/edit/store/entered.ts";
import {
	quantityOf,
	type StoreEntry,
	type WrongField,
} from "../../../core/edit/store/storeEntry.ts";
import { say } from "../../../core/say.ts";
import { amountOf } from "../../format/amountOf.ts";
import { EXACT } from "../../format/litreWords.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownPlain } from "../../format/shownNumber.ts";

/** What an entry came to, in a sentence or two. */
export function doneWords(done: Done, entry: StoreEntry, measure: string): string {
	const { item, day } = entry;
	const lot = entry.lot.trim();
	const quantity = quantityOf(entry);
	const amount = amountOf(quantity, measure, EXACT);
	switch (done.kind) {
		case "new_lot":
			return say`${item}: new lot ${lot} with ${amount}, received on ${shownDay(day)}. It stands in the list of lots.`;
		case "arrival":
			return say`${item}, lot ${lot}: arrived on ${shownDay(day)}, ${amount}, ${againstOrder(quantity, done.ordered)}.`;
		default:
			return [
				say`${item}, lot ${lot}.`,
				againstBooks(done.kind, quantity, amount, done.books),
				say`On hand now: ${amountOf(done.onHand, measure, EXACT)}.`,
			].join(" ");
	}
}

function againstOrder(came: number, ordered: number): string {
	const gap = Number((came - ordered).toFixed(6));
	if (gap === 0) return say`as ordered`;
	return gap < 0
		? say`${shownPlain(-gap)} less than ordered`
		: say`${shownPlain(gap)} more than ordered`;
}

/** What an entry says against the books. */
function againstBooks(
	kind: StoreEntry["kind"],
	quantity: number,
	amount: string,
	books: number,
): string {
	if (kind === "receipt") return say`Received ${amount}.`;
	const gap = Number((quantity - books).toFixed(6));
	if (kind === "issue")
		return gap > 0
			? say`Issued ${amount}, ${shownPlain(gap)} more than the books held: count this lot.`
			: say`Issued ${amount}.`;
	if (kind === "loss")
		return gap > 0
			? say`Lost ${amount}, ${shownPlain(gap)} more than the books held: count this lot.`
			: say`Lost ${amount}.`;
	const said = shownPlain(books);
	if (gap === 0) return say`Counted ${amount}; the books said ${said}: they agree.`;
	return gap < 0
		? say`Counted ${amount}; the books said ${said}: ${shownPlain(-gap)} less than that.`
		: say`Counted ${amount}; the books said ${said}: ${shownPlain(gap)} more than that.`;
}

/** What is wrong with a field, in words. */
export function wrongWords(wrong: WrongField, { lot }: StoreEntry): string {
	return "words" in wrong
		? wrong.words
		: say`Lot ${lot} is on the way and due on ${shownDay(wrong.arrives)}: enter it as received first.`;
}
