import { orderSheet } from "../../../core/sheets/order.ts";
import { el } from "../../dom/el.ts";
import type { SheetPage, SheetPart, Surroundings } from "../../page.ts";
import type { State } from "../../state/store.ts";
import { storeCautions } from "../store/storeCautions.ts";
import { limitsPart } from "./limitsPart.ts";
import { orderForm } from "./orderForm.ts";
import { orderHeadline } from "./orderWords.ts";
import { placeOrderPart } from "./placeOrderPart.ts";
import { orderView } from "./shownOrder.ts";
import { takenParts } from "./takenParts.ts";

/** What to order, and how pressing it is. */
export const orderPage: SheetPage = {
	sheet: orderSheet,
	headline: orderHeadline,
	over: orderOver,
	part: orderParts,
	cautions: storeCautions,
	prints: [orderForm],
};

/** What there is for the order, then that it has gone out. */
function orderParts(around: Surroundings): SheetPart {
	const parts = [limitsPart(around), placeOrderPart(around)];
	return {
		element: el("div", {}, ...parts.map(({ element }) => element)),
		paint(state) {
			for (const part of parts) part.paint(state);
		},
	};
}

function orderOver(state: State): HTMLElement {
	return el("div", {}, ...takenParts(state), orderView(state));
}
