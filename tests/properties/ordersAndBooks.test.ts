import fc from "fast-check";
import { expect, test } from "vitest";
import { entered } from "../../src/core/edit/store/entered.ts";
import { orderGivenUp } from "../../src/core/edit/store/orderGivenUp.ts";
import { orderReceived } from "../../src/core/edit/store/orderReceived.ts";
import { ordersPlaced } from "../../src/core/edit/store/ordersPlaced.ts";
import { lotsOnHand } from "../../src/core/plan/store/lotsOnHand.ts";
import { readWorkbook } from "../../src/core/read/readWorkbook.ts";
import { addDays } from "../../src/core/values/date.ts";
import type { Workbook } from "../../src/core/workbook.ts";
import { smallUnit } from "../core/smallUnit.ts";
import { always } from "./workbooks.ts";

const ITEM = "gauze squares";
const PACK_SIZE = 100;
const LOTS = ["N1", "N2", "N3"];

type Act =
	| { readonly what: "place"; readonly packs: number }
	| {
			readonly what: "receive";
			readonly which: number;
			readonly packs: number;
			readonly lot: string;
			readonly restToCome: boolean;
	  }
	| { readonly what: "give up"; readonly which: number }
	| { readonly what: "issue" | "loss" | "count"; readonly lot: string; readonly quantity: number };

const packs = fc.integer({ min: 1, max: 5 });
const which = fc.integer({ min: 0, max: 3 });
const lot = fc.constantFrom(...LOTS);
const act: fc.Arbitrary<Act> = fc.oneof(
	fc.record({ what: fc.constant("place" as const), packs }),
	fc.record({ what: fc.constant("receive" as const), which, packs, lot, restToCome: fc.boolean() }),
	fc.record({ what: fc.constant("give up" as const), which }),
	fc.record({
		what: fc.constantFrom("issue" as const, "loss" as const, "count" as const),
		lot,
		quantity: fc.integer({ min: 0, max: 300 }),
	}),
);

/** What the books must say, kept by plain arithmetic beside them. */
interface Model {
	readonly stock: Map<string, number>;
	/** Packs on their way, order by order in the order of their lines. */
	orders: number[];
}

/** Lines of the orders that are neither received nor given up. */
function linesOnTheWay(workbook: Workbook): number[] {
	return readWorkbook(workbook)
		.tables.placed.rows.filter(({ value }) => value.received_on === null && value.packs > 0)
		.map(({ line }) => line);
}

function done(workbook: Workbook, model: Model, one: Act, day: string): Workbook {
	if (one.what === "place") {
		const placed = ordersPlaced(workbook, day, [{ item: ITEM, packs: String(one.packs) }]);
		if (!placed.ok) throw new Error("an order could not be placed");
		model.orders.push(one.packs);
		return placed.workbook;
	}
	if (one.what === "receive" || one.what === "give up") {
		const at = one.which % Math.max(1, model.orders.length);
		const line = linesOnTheWay(workbook)[at];
		if (line === undefined) return workbook;
		const ordered = model.orders[at] as number;
		model.orders = model.orders.filter((_, order) => order !== at);
		if (one.what === "give up") return orderGivenUp(workbook, line);
		const received = orderReceived(workbook, {
			line,
			packs: String(one.packs),
			day,
			lot: one.lot,
			made: "",
			expires: "2030-01-01",
			restToCome: one.restToCome,
		});
		if (!received.ok) throw new Error("a delivery could not be written");
		model.stock.set(one.lot, (model.stock.get(one.lot) ?? 0) + one.packs * PACK_SIZE);
		if (one.restToCome && ordered > one.packs) model.orders.push(ordered - one.packs);
		return received.workbook;
	}
	const before = model.stock.get(one.lot);
	if (before === undefined) return workbook;
	const written = entered(workbook, {
		kind: one.what,
		item: ITEM,
		lot: one.lot,
		isNew: false,
		day,
		quantity: String(one.quantity),
		note: "",
		expires: "",
		made: "",
	});
	if (!written.ok) throw new Error("an entry could not be written");
	model.stock.set(
		one.lot,
		one.what === "count" ? one.quantity : Math.max(0, before - one.quantity),
	);
	return written.workbook;
}

test("lots, journal and orders add up under any sequence of acts, and nothing is ever below nought", () => {
	let received = 0;
	fc.assert(
		fc.property(fc.array(act, { minLength: 10, maxLength: 25 }), (acts) => {
			const model: Model = { stock: new Map(), orders: [] };
			let workbook = smallUnit();
			acts.forEach((one, at) => {
				workbook = done(workbook, model, one, addDays("2027-01-01", at));
				const read = readWorkbook(workbook);
				const books = new Map(
					lotsOnHand(read)
						.filter(({ row }) => row.value.item === ITEM)
						.map(({ row, quantity }) => [row.value.lot, quantity]),
				);
				expect(books).toEqual(model.stock);
				expect(linesOnTheWay(workbook)).toHaveLength(model.orders.length);
				const onTheWay = read.tables.placed.rows
					.filter(({ value }) => value.received_on === null)
					.reduce((sum, { value }) => sum + value.packs, 0);
				expect(onTheWay).toBe(model.orders.reduce((sum, more) => sum + more, 0));
				for (const quantity of books.values()) expect(quantity).toBeGreaterThanOrEqual(0);
			});
			received += [...model.stock.keys()].length;
		}),
		always(150),
	);
	expect(received).toBeGreaterThan(100);
});
