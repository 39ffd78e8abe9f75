import { say } from "../../say.ts";
import type { Workbook } from "../../workbook.ts";
import { orderOnTheWay, withOrder } from "./orderOnTheWay.ts";

/** The workbook with an order given up: its line stays, with 0 packs and a note of how many it had. */
export function orderGivenUp(workbook: Workbook, line: number): Workbook {
	const order = orderOnTheWay(workbook, line);
	if (!order) return workbook;
	const { packs, note } = order.value;
	const had = say`packs ordered: ${packs}`;
	const noted = note.trim() === "" ? had : `${note.trim()}; ${had}`;
	return withOrder(workbook, line, { packs: "0", note: noted });
}
