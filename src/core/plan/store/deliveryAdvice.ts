import { valueIn } from "../../outcome.ts";
import { advice, type Problem } from "../../problem.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { lotsSheet } from "../../sheets/lots.ts";
import { placedSheet } from "../../sheets/placed.ts";
import { addDays, DAYS_PER_WEEK, type IsoDate } from "../../values/date.ts";
import { isOverdue, isOverdueAndOutOfDate, lotsOnHand } from "./lotsOnHand.ts";
import { ordersOnTheWay } from "./ordersOnTheWay.ts";

/** Deliveries whose day has passed and that nobody has received, and what a delivery left out. */
export function deliveryAdvice(read: ReadWorkbook, firstDay: IsoDate): Problem[] {
	const reviewDays = valueIn(read.settings.review_days) ?? DAYS_PER_WEEK;
	return [...overdue(read, firstDay), ...restOfOrders(read, addDays(firstDay, -reviewDays))];
}

function overdue(read: ReadWorkbook, firstDay: IsoDate): Problem[] {
	const allowed = say`the day it came, or a new day on which it is due`;
	const lots = lotsOnHand(read)
		.filter((lot) => isOverdue(lot, firstDay))
		.map((overdueLot) => {
			const { line, value } = overdueLot.row;
			const { item, lot, arrives_on: day, expires_on: expires } = value;
			return advice(
				{ file: lotsSheet.file, line, column: "arrives_on" },
				{
					code: "delivery-overdue",
					received: day ?? "",
					allowed,
					message: isOverdueAndOutOfDate(overdueLot, firstDay)
						? say`Lot ${lot} of ${item} was to arrive on ${day}, has not been received, and could be used until ${expires}: it counts neither as on the way nor as stock. Put its days right, or take the line out.`
						: say`Lot ${lot} of ${item} was to arrive on ${day} and has not been received: it counts as on the way, not as stock. Enter it as received, or put its day right.`,
				},
			);
		});
	const orders = ordersOnTheWay(read.tables)
		.filter(({ expectedOn }) => expectedOn < firstDay)
		.map(({ row: { line, value }, expectedOn }) =>
			advice(
				{ file: placedSheet.file, line, column: "expected_on" },
				{
					code: "delivery-overdue",
					received: expectedOn,
					allowed,
					message: say`The order of ${value.item} of ${value.ordered_on} was due on ${expectedOn} and has not been received: it counts as on the way, not as stock. Enter it as received, put the day right, or give it up with 0 packs.`,
				},
			),
		);
	return [...lots, ...orders];
}

/** Part of an order that did not come with the rest, while that is news. */
function restOfOrders({ tables }: ReadWorkbook, since: IsoDate): Problem[] {
	return tables.placed.rows.flatMap((row) => {
		const { item, packs, packs_received: came, received_on: received } = row.value;
		if (received === null || came === null || came >= packs || received < since) return [];
		// Its own line says that the rest is still to come, or by 0 packs that it was given up.
		const followed = tables.placed.rows.some(
			(other) =>
				other !== row &&
				other.value.item === item &&
				other.value.ordered_on === row.value.ordered_on &&
				(other.value.packs === packs - came || other.value.packs === 0),
		);
		if (followed) return [];
		return [
			advice(
				{ file: placedSheet.file, line: row.line, column: "packs_received" },
				{
					code: "rest-of-order",
					received: say`${came} of ${packs}`,
					allowed: say`all of them, or a line of its own for the rest`,
					message: say`Of the order of ${item} of ${row.value.ordered_on}, ${came} of ${packs} came; the rest is not counted as on the way. If it is still to come, add a line for it.`,
				},
			),
		];
	});
}
