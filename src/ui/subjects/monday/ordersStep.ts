import { storeBooks } from "../../../core/edit/store/storeBooks.ts";
import { ordersOnTheWay } from "../../../core/plan/store/ordersOnTheWay.ts";
import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import { counted } from "../../format/counted.ts";
import { placeOrderPart } from "../order/placeOrderPart.ts";
import { receivePart } from "../order/receivePart.ts";
import { LOOKED_AT, type StepPart } from "./mondayStep.ts";

/** Orders on their way are received here; what is ordered now is written down. */
export const ordersStep: StepPart = (around, { done }) => {
	const { store } = around;
	const received = receivePart(around);
	const placed = placeOrderPart(around);
	const words = el("p", {});
	return {
		element: el(
			"div",
			{},
			words,
			received.element,
			placed.element,
			el(
				"button",
				{ type: "button", onclick: () => done(store.state.workbook, words.textContent ?? "") },
				LOOKED_AT,
			),
		),
		paint(state) {
			const orders = ordersOnTheWay(storeBooks(state.workbook)).length;
			words.textContent =
				orders === 0 ? say`No order is on the way.` : say`${counted(orders, "order")} on the way.`;
			received.paint(state);
			placed.paint(state);
		},
	};
};
