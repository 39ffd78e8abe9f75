import { advice, type Problem, problem } from "../../problem.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { journalSheet } from "../../sheets/journal.ts";
import { lotsSheet } from "../../sheets/lots.ts";
import { strengthReadingsSheet } from "../../sheets/strengthReadings.ts";
import type { IsoDate } from "../../values/date.ts";
import { countsByNow } from "../countsByNow.ts";
import { recordInFuture } from "../recordInFuture.ts";
import { countAdvice } from "./countAge.ts";
import { deliveryAdvice } from "./deliveryAdvice.ts";
import { drawAdvice } from "./drawAdvice.ts";
import { madeOnProblem } from "./madeOnProblem.ts";
import { placedProblems } from "./placedProblems.ts";
import { receivedOnProblem } from "./receivedOnProblem.ts";
import { receivedTwice } from "./receivedTwice.ts";

/** What cannot be right about the lots, the journal, the readings and the orders of the store. @param firstDay and @param lastDay of the plan */
export function storeAdvice(read: ReadWorkbook, firstDay: IsoDate, lastDay: IsoDate): Problem[] {
	return [
		...unknownItems(read),
		...unknownLots(read),
		...unknownReadings(read),
		...notYet(read, lastDay),
		...expiredOnArrival(read),
		...read.tables.lots.rows.flatMap((row) => madeOnProblem(read, row) ?? []),
		...read.tables.lots.rows.flatMap((row) => receivedOnProblem(read, row) ?? []),
		...receivedTwice(read),
		...placedProblems(read, lastDay),
		...deliveryAdvice(read, firstDay),
		...countAdvice(read, firstDay),
		...drawAdvice(read),
	];
}

function unknownItems({ tables: { lots, items } }: ReadWorkbook): Problem[] {
	if (items.absent) return [];
	const known = new Set([...items.rows, ...items.badRows].map(({ value }) => value.item));
	return lots.rows
		.filter(({ value }) => !known.has(value.item))
		.map(({ line, value }) =>
			advice(
				{ file: lotsSheet.file, line, column: "item" },
				{
					code: "unknown-item",
					received: value.item,
					allowed: say`an item listed in ${itemsSheet.file}`,
					message: say`Lot ${value.lot} is of "${value.item}", which is not among the items of the store, so it is not counted as stock of any.`,
				},
			),
		);
}

function keyOf({ item, lot }: { readonly item?: string; readonly lot?: string }): string {
	return JSON.stringify([item, lot]);
}

/** An entry that changes no lot would be lost without a word. */
function unknownLots({ tables: { lots, journal } }: ReadWorkbook): Problem[] {
	const known = new Set([...lots.rows, ...lots.badRows].map(({ value }) => keyOf(value)));
	return journal.rows
		.filter(({ value }) => !known.has(keyOf(value)))
		.map(({ line, value }) =>
			problem(
				{ file: journalSheet.file, line, column: "lot" },
				{
					code: "unknown-lot",
					received: `${value.item}, ${value.lot}`,
					allowed: say`an item and lot listed in ${lotsSheet.file}`,
					message: say`The journal has an entry for lot ${value.lot} of ${value.item}, which is not listed in ${lotsSheet.file}; the entry changes nothing. List the lot, with quantity 0 if all of it is in the journal.`,
				},
			),
		);
}

/** A reading that stands beside no lot would be lost without a word, also where it found a lot too weak. */
function unknownReadings({ tables: { lots, strengthReadings } }: ReadWorkbook): Problem[] {
	const known = new Set([...lots.rows, ...lots.badRows].map(({ value }) => keyOf(value)));
	return strengthReadings.rows
		.filter(({ value }) => !known.has(keyOf(value)))
		.map(({ line, value: { item, lot } }) =>
			advice(
				{ file: strengthReadingsSheet.file, line, column: "lot" },
				{
					code: "unknown-lot",
					received: `${item}, ${lot}`,
					allowed: say`an item and lot listed in ${lotsSheet.file}`,
					message: say`There is a reading of lot ${lot} of ${item}, which is not listed in ${lotsSheet.file}; it is held against no lot.`,
				},
			),
		);
}

/** What went in or out, was counted or was read on a day after the plan. */
function notYet(read: ReadWorkbook, lastDay: IsoDate): Problem[] {
	const { journal, strengthReadings } = read.tables;
	const dated = [
		...journal.rows.map(({ line, value }) => ({
			file: journalSheet.file,
			line,
			column: "day",
			day: value.day,
		})),
		...strengthReadings.rows.map(({ line, value }) => ({
			file: strengthReadingsSheet.file,
			line,
			column: "read_on",
			day: value.read_on,
		})),
	];
	return dated
		.filter(({ day }) => !countsByNow(read, day))
		.map(({ day, ...place }) => recordInFuture(place, day, lastDay));
}

function expiredOnArrival({ tables: { lots } }: ReadWorkbook): Problem[] {
	return lots.rows.flatMap(({ line, value }) => {
		const { lot, expires_on: expires } = value;
		const came = [value.made_on, value.received_on ?? value.arrives_on].filter(
			(day) => day !== null,
		);
		const last = came.sort().at(-1);
		if (expires === null || last === undefined || expires >= last) return [];
		return [
			advice(
				{ file: lotsSheet.file, line, column: "expires_on" },
				{
					code: "expires-before-received",
					received: expires,
					allowed: say`${last} or later`,
					message: say`Lot ${lot} expires on ${expires}, before it was made or received (${last}); look at its label again.`,
				},
			),
		];
	});
}
