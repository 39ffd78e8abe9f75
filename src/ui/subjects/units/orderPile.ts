import type { Problem } from "../../../core/problem.ts";
import type { Customs, Question } from "../../../core/read/block/blockTable.ts";
import { say } from "../../../core/say.ts";
import type { UnitOrder } from "../../../core/units/combineOrders.ts";
import { tooLargeFile } from "../../../io/fileProblems.ts";
import { readOrder, sameOrderTwice } from "../../../io/readOrders.ts";
import { isZip, type NamedBytes, unzip } from "../../../io/unzip.ts";
import { MOST_BYTES } from "../../../io/zipRefusals.ts";

/** A saved workbook holds the order as this program wrote it. */
const OWN: Customs = { numbers: "point" };

/** What was found wrong with one file, and how much of it is used all the same. */
export interface FileReport {
	readonly file: string;
	readonly problems: readonly Problem[];
	/** Items read from it; 0: the file is not used. */
	readonly items: number;
}

/** Several units' order files as they come in, one at a time, so that a page can stay alive between two. */
export class OrderPile {
	readonly #orders: UnitOrder[] = [];
	readonly #reports: FileReport[] = [];
	readonly #seen = new Map<string, string>();
	readonly #names = new Map<string, number>();

	/** Orders with at least one item that could be read. */
	get orders(): readonly UnitOrder[] {
		return this.#orders;
	}

	/** Files of which something has to be said. */
	get reports(): readonly FileReport[] {
		return this.#reports;
	}

	/**
	 * Takes an order file, or a saved workbook with one in it.
	 *
	 * @param answers what the person answered; "none" where they did not: it is reported and not used
	 * @returns what only the person can know of its numbers or dates; it is not taken then
	 */
	add(file: NamedBytes, answers: Customs | "none" = {}): Question | undefined {
		const times = (this.#names.get(file.name) ?? 0) + 1;
		const name = times === 1 ? file.name : `${file.name} (${times})`;
		const question = this.#take({ name, bytes: file.bytes }, answers);
		if (!question) this.#names.set(file.name, times);
		return question;
	}

	/** Units often send files of one name, and none of them may stand in for another. */
	#take(given: NamedBytes, answers: Customs | "none"): Question | undefined {
		if (given.bytes.length > MOST_BYTES) {
			this.#report(given.name, [tooLargeFile(given.name, given.bytes.length)], 0);
			return undefined;
		}
		if (!isZip(given.bytes)) return this.#addOrder(given, answers);
		this.#addWorkbook(given);
		return undefined;
	}

	#addWorkbook(given: NamedBytes): void {
		const { files, problems } = unzip(given.name, given.bytes);
		const inside = files.filter(({ name }) => /(^|\/)order\.csv$/i.test(name));
		if (inside.length === 0)
			this.#report(given.name, problems.length > 0 ? problems : [noOrder(given.name)], 0);
		for (const file of inside) this.#addOrder({ name: given.name, bytes: file.bytes }, OWN);
	}

	#addOrder(file: NamedBytes, answers: Customs | "none"): Question | undefined {
		const content = new TextDecoder().decode(file.bytes);
		const earlier = this.#seen.get(content);
		if (earlier !== undefined) {
			this.#report(file.name, [sameOrderTwice(file.name, earlier)], 0);
			return undefined;
		}
		const { order, problems, question } = readOrder(file, answers === "none" ? {} : answers);
		if (question && answers !== "none") return question;
		this.#seen.set(content, file.name);
		const items = order?.rows.rows.length ?? 0;
		if (order && items > 0) this.#orders.push(order);
		if (problems.length > 0 || items === 0)
			this.#report(file.name, problems.length > 0 ? problems : [noOrder(file.name)], items);
		return undefined;
	}

	#report(file: string, problems: readonly Problem[], items: number): void {
		this.#reports.push({ file, problems, items });
	}
}

function noOrder(file: string): Problem {
	return {
		code: "no-order",
		weight: "error",
		file,
		line: null,
		column: "",
		received: file,
		allowed: say`an order.csv as Basinbook saves it, or a saved workbook`,
		message: say`${file} holds no order. Save the sheet “What to order” in the unit's workbook and give that file.`,
	};
}
