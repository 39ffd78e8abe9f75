import { type Problem, problem } from "../../problem.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { lotsSheet } from "../../sheets/lots.ts";
import { type PlacedRow, placedSheet } from "../../sheets/placed.ts";
import type { IsoDate } from "../../values/date.ts";
import { lastCounted } from "../countsByNow.ts";

const at = ({ line }: GoodRow<PlacedRow>, column: keyof PlacedRow & string) => ({
	file: placedSheet.file,
	line,
	column,
});

/** What cannot be right about the orders that were placed. */
export function placedProblems(read: ReadWorkbook, lastDay: IsoDate): Problem[] {
	const { placed, items, lots } = read.tables;
	const counted = lastCounted(read, lastDay);
	const known = new Set([...items.rows, ...items.badRows].map(({ value }) => value.item));
	const keyOf = (value: { item?: string; lot?: string }) => JSON.stringify([value.item, value.lot]);
	const listed = new Set([...lots.rows, ...lots.badRows].map(({ value }) => keyOf(value)));
	const received = new Map<string, GoodRow<PlacedRow>>();
	return placed.rows.flatMap((row) => {
		const { value } = row;
		if (!items.absent && !known.has(value.item)) return [unknownItem(row)];
		const found = daysOf(row, lastDay, counted);
		if (value.received_on === null)
			return value.packs_received === null ? found : [...found, noDay(row)];
		if (value.packs === 0) return [...found, givenUp(row)];
		const key = JSON.stringify([value.ordered_on, value.item, value.packs, value.lot]);
		const before = received.get(key);
		if (before) return [...found, twice(row, before)];
		received.set(key, row);
		const isListed = listed.has(keyOf(value));
		return isListed || value.packs_received === 0 ? found : [...found, noLot(row)];
	});
}

function unknownItem(row: GoodRow<PlacedRow>): Problem {
	const { item } = row.value;
	return problem(at(row, "item"), {
		code: "unknown-item",
		received: item,
		allowed: say`an item listed in ${itemsSheet.file}`,
		message: say`An order was placed for "${item}", which is not among the items of the store, so it is not counted as on the way.`,
	});
}

function daysOf(row: GoodRow<PlacedRow>, lastDay: IsoDate, counted: IsoDate): Problem[] {
	const { ordered_on: ordered, expected_on: expected, received_on: received, item } = row.value;
	const found: Problem[] = [];
	for (const [column, day] of [
		["ordered_on", ordered],
		["received_on", received ?? ""],
	] as const)
		if (day > counted)
			found.push(
				problem(at(row, column), {
					code: "record-in-future",
					received: day,
					allowed: say`a day up to ${lastDay}, the last day of the plan`,
					message: say`The order of ${item} has the day ${day}, after the plan ends; correct it, or let the plan move on first.`,
				}),
			);
	if (received !== null && received < ordered)
		found.push(
			problem(at(row, "received_on"), {
				code: "received-before-ordered",
				received,
				allowed: say`${ordered} or later`,
				message: say`The order of ${item} was received on ${received}, before it was placed on ${ordered}; correct one of the days.`,
			}),
		);
	if (expected !== null && expected < ordered)
		found.push(
			problem(at(row, "expected_on"), {
				code: "expected-before-ordered",
				received: expected,
				allowed: say`${ordered} or later`,
				message: say`The order of ${item} is due on ${expected}, before it was placed on ${ordered}; correct one of the days.`,
			}),
		);
	return found;
}

function noDay(row: GoodRow<PlacedRow>): Problem {
	const { item, packs_received: packs } = row.value;
	return problem(at(row, "received_on"), {
		code: "received-without-day",
		received: say`${packs ?? 0}, and no day`,
		allowed: say`the day they came`,
		message: say`The order of ${item} has packs received (${packs ?? 0}) and no day; until the day is given the whole order counts as on the way.`,
	});
}

function givenUp(row: GoodRow<PlacedRow>): Problem {
	const { item, received_on: received } = row.value;
	return problem(at(row, "packs"), {
		code: "received-and-given-up",
		received: "0",
		allowed: say`the packs that were ordered`,
		message: say`The order of ${item} has no packs, as one that was given up, and was received on ${received}; say how many were ordered.`,
	});
}

function twice(row: GoodRow<PlacedRow>, before: GoodRow<PlacedRow>): Problem {
	const { item, ordered_on: ordered } = row.value;
	return problem(at(row, "received_on"), {
		code: "order-received-twice",
		received: say`lines ${before.line} and ${row.line}`,
		allowed: say`each order received once`,
		message: say`The order of ${item} of ${ordered} is received twice, in lines ${before.line} and ${row.line}; take one out, or give the second its own lot.`,
	});
}

/** What came has to stand among the lots with its expiry; until then it would be used unseen. */
function noLot(row: GoodRow<PlacedRow>): Problem {
	const { item, lot, received_on: received } = row.value;
	return problem(at(row, "lot"), {
		code: "received-without-lot",
		received: lot,
		allowed: say`a lot of the item in ${lotsSheet.file}`,
		message: say`${item} was received on ${received}, and its lot is not among the lots in the store, so nothing of it counts as stock; list the lot with its expiry.`,
	});
}
