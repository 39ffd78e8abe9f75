import { storeBooks } from "../../../core/edit/store/storeBooks.ts";
import { ordersOnTheWay } from "../../../core/plan/store/ordersOnTheWay.ts";
import { say } from "../../../core/say.ts";
import { journalSheet } from "../../../core/sheets/journal.ts";
import { receivePart } from "../order/receivePart.ts";
import type { Bench } from "./bench.ts";
import { benchDialog } from "./benchDialog.ts";

/** An order came: the orders on their way, ready to be received; without any, the journal of the store. */
export function openReceived({ around }: Bench): void {
	const { store } = around;
	if (ordersOnTheWay(storeBooks(store.state.workbook)).length === 0) {
		void around.goTo({ file: journalSheet.file, line: null, column: "" });
		return;
	}
	const part = receivePart(around);
	part.paint(store.state);
	const { dialog, form } = benchDialog(say`Received`, undefined);
	// The part is a form of its own.
	form.replaceWith(part.element);
	part.element.querySelector<HTMLElement>("input, select")?.focus();
	const stop = store.subscribe((state) => part.paint(state));
	dialog.addEventListener("close", stop);
}
