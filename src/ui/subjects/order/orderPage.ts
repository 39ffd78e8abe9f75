import { orderSheet } from "../../../core/sheets/order.ts";
import type { SheetPage } from "../../page.ts";
import { storeCautions } from "../store/storeCautions.ts";
import { orderForm } from "./orderForm.ts";
import { orderHeadline } from "./orderWords.ts";
import { placeOrderPart } from "./placeOrderPart.ts";
import { orderView } from "./shownOrder.ts";

/** What to order, and how pressing it is. */
export const orderPage: SheetPage = {
	sheet: orderSheet,
	headline: orderHeadline,
	over: orderView,
	part: placeOrderPart,
	cautions: storeCautions,
	prints: [orderForm],
};
