import { advice, type Problem } from "../core/problem.ts";
import type { Question } from "../core/read/block/blockTable.ts";
import { say } from "../core/say.ts";
import { orderSheet } from "../core/sheets/order.ts";
import type { UnitOrder } from "../core/units/combineOrders.ts";
import type { Answers } from "./fileQuestion.ts";
import { readSheetApart } from "./readSheetApart.ts";
import type { NamedBytes } from "./unzip.ts";

export interface ReadOrders {
	readonly orders: readonly UnitOrder[];
	readonly problems: readonly Problem[];
}

interface ReadOrder {
	readonly order: UnitOrder | undefined;
	readonly problems: readonly Problem[];
	/** Set where the order waits for an answer; it is among the problems too. */
	readonly question?: Question;
}

/**
 * Reads one unit's order file; a file that is none is a problem and gives no rows. Numbers
 * and dates are read by what the file itself tells: each unit has a program of its own.
 *
 * @param answers to what the file may leave open
 */
export function readOrder({ name, bytes }: NamedBytes, answers: Answers = {}): ReadOrder {
	const { rows, problems, question } = readSheetApart(
		{ ...orderSheet, file: name },
		bytes,
		answers,
	);
	return { order: rows && { file: name, rows }, problems, ...(question && { question }) };
}

/** Reads several units' order files; the same bytes given twice are counted once and named. */
export function readOrders(files: readonly NamedBytes[], answers: Answers = {}): ReadOrders {
	const orders: UnitOrder[] = [];
	const problems: Problem[] = [];
	const seen = new Map<string, string>();
	for (const file of files) {
		const content = new TextDecoder().decode(file.bytes);
		const earlier = seen.get(content);
		if (earlier !== undefined) {
			problems.push(sameOrderTwice(file.name, earlier));
			continue;
		}
		const read = readOrder(file, answers);
		for (const found of read.problems) problems.push(found);
		if (!read.order) continue;
		seen.set(content, file.name);
		orders.push(read.order);
	}
	return { orders, problems };
}

/** The same bytes under two names: one unit, not two. */
export function sameOrderTwice(file: string, earlier: string): Problem {
	return advice(
		{ file, line: null, column: "" },
		{
			code: "same-order-twice",
			received: file,
			allowed: say`each unit's order once`,
			message: say`${file} says the same as ${earlier}, letter by letter; it is counted once.`,
		},
	);
}
