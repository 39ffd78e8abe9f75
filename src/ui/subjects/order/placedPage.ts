import { storeBooks } from "../../../core/edit/store/storeBooks.ts";
import { ordersOnTheWay } from "../../../core/plan/store/ordersOnTheWay.ts";
import { say } from "../../../core/say.ts";
import { placedSheet } from "../../../core/sheets/placed.ts";
import { counted } from "../../format/counted.ts";
import type { SheetPage } from "../../page.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { storeCautions } from "../store/storeCautions.ts";
import { receivePart } from "./receivePart.ts";

/** The orders that were placed, and where they are received. */
export const placedPage: SheetPage = {
	sheet: placedSheet,
	headline: placedHeadline,
	part: receivePart,
	cautions: storeCautions,
};

function placedHeadline(state: State): string {
	const orders = ordersOnTheWay(storeBooks(state.workbook));
	const firstDay = unitSetting(state, "plan_start") ?? "";
	const late = orders.filter(({ expectedOn }) => expectedOn < firstDay).length;
	if (orders.length === 0) return say`No order is on the way`;
	const coming = say`${counted(orders.length, "order")} on the way`;
	return late === 0 ? coming : say`${coming}, ${late} overdue`;
}
