import { describe, expect, test } from "vitest";
import { orderGivenUp } from "../../../src/core/edit/store/orderGivenUp.ts";
import { type Delivery, orderReceived } from "../../../src/core/edit/store/orderReceived.ts";
import { ordersPlaced } from "../../../src/core/edit/store/ordersPlaced.ts";
import type { Workbook } from "../../../src/core/workbook.ts";
import { smallUnit } from "../smallUnit.ts";

const HEADER = "ordered_on,item,packs,expected_on,received_on,packs_received,lot,note";

const unit = (...orders: string[]) =>
	smallUnit({
		"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
			gauze squares,G1,140,,2027-02-01,,2030-01-31
			gauze squares,G2,100,,,2027-03-04,2030-06-30`,
		"placed.csv": [HEADER, ...orders].join("\n"),
	});

const rowsOf = (workbook: Workbook, file: string) =>
	(workbook.tables[file]?.rows ?? []).map((row) => row.join(","));

const delivery: Delivery = {
	line: 2,
	packs: "3",
	day: "2027-03-03",
	lot: "N1",
	made: "",
	expires: "2030-12-31",
	restToCome: false,
};

test("what is ordered is one line an item, and items without packs have none", () => {
	const placed = ordersPlaced(unit(), "2027-03-01", [
		{ item: "gauze squares", packs: "3" },
		{ item: "clean gloves", packs: "0" },
		{ item: "vinegar", packs: "" },
	]);
	expect(placed.ok && rowsOf(placed.workbook, "placed.csv")).toEqual([
		"2027-03-01,gauze squares,3,,,,,",
	]);
});

test("spaces around what is ordered are none of it, and orders are counted", () => {
	const placed = ordersPlaced(unit(), " 2027-03-01 ", [
		{ item: "gauze squares", packs: " 3 " },
		{ item: "vinegar", packs: "1" },
		{ item: "clean gloves", packs: " 0 " },
	]);
	expect(placed.ok && placed.orders).toBe(2);
	expect(placed.ok && rowsOf(placed.workbook, "placed.csv")).toEqual([
		"2027-03-01,gauze squares,3,,,,,",
		"2027-03-01,vinegar,1,,,,,",
	]);
});

test("what is wrong with an order is said beside its item; a wrong day has none", () => {
	const placed = ordersPlaced(unit(), "soon", [
		{ item: "gauze squares", packs: "3" },
		{ item: "vinegar", packs: "many" },
	]);
	expect(!placed.ok && placed.wrong.map(({ item, words }) => [item, words.split(":")[0]])).toEqual([
		[undefined, "Ordered on"],
		["vinegar", "Packs"],
	]);
});

test("an order that cannot be is refused, and nothing is written", () => {
	const refused = (day: string, packs: string) =>
		ordersPlaced(unit(), day, [{ item: "vinegar", packs }]).ok;
	expect([refused("soon", "3"), refused("2027-03-01", "many"), refused("2027-03-01", "0")]).toEqual(
		[false, false, false],
	);
});

describe("an order that comes", () => {
	const order = "2027-02-25,gauze squares,3,,,,,by phone";
	const came = (of: Partial<Delivery>, ...orders: string[]) => {
		const result = orderReceived(unit(order, ...orders), { ...delivery, ...of });
		if (!result.ok) throw new Error(JSON.stringify(result.wrong));
		return result;
	};

	test("makes its lot: packs × pack size, the day it came, its expiry", () => {
		const { workbook, quantity } = came({});
		expect(quantity).toBe(300);
		expect(rowsOf(workbook, "lots.csv")).toHaveLength(3);
		expect(rowsOf(workbook, "lots.csv")[2]).toBe("gauze squares,N1,300,,2027-03-03,,2030-12-31");
		expect(rowsOf(workbook, "placed.csv")).toEqual([
			"2027-02-25,gauze squares,3,,2027-03-03,3,N1,by phone",
		]);
		expect(workbook.tables["journal.csv"]).toBeUndefined();
	});

	test("of a lot that is in the store already, is a receipt of the journal", () => {
		const { workbook } = came({ lot: " G1 " });
		expect(rowsOf(workbook, "lots.csv")).toHaveLength(2);
		expect(rowsOf(workbook, "placed.csv")[0]).toContain(",3,G1,");
		expect(rowsOf(workbook, "journal.csv")).toEqual(["2027-03-03,gauze squares,G1,receipt,300,,"]);
	});

	test("of a lot that was announced, is that lot, and counts once", () => {
		const { workbook } = came({ lot: "G2" });
		expect(rowsOf(workbook, "lots.csv")[1]).toBe(
			"gauze squares,G2,300,,2027-03-03,2027-03-03,2030-06-30",
		);
		expect(workbook.tables["journal.csv"]).toBeUndefined();
	});

	test("in part, with the rest still to come in a line of its own", () => {
		const { workbook, quantity } = came({ packs: "2", restToCome: true });
		expect(quantity).toBe(200);
		expect(rowsOf(workbook, "placed.csv")).toEqual([
			"2027-02-25,gauze squares,3,,2027-03-03,2,N1,by phone",
			"2027-02-25,gauze squares,1,,,,,",
		]);
	});

	test("in part, the rest is still due on the day that was written down", () => {
		const placed = unit("2027-02-25,gauze squares,3,2027-03-09,,,,");
		const result = orderReceived(placed, { ...delivery, packs: "2", restToCome: true });
		expect(result.ok && rowsOf(result.workbook, "placed.csv")[1]).toBe(
			"2027-02-25,gauze squares,1,2027-03-09,,,,",
		);
	});

	test("in parts of a pack, and all of it, nothing is left to come", () => {
		const { workbook, quantity } = came({ packs: " 2.9 ", restToCome: true, day: " 2027-03-03 " });
		expect(quantity).toBe(290);
		expect(rowsOf(workbook, "placed.csv")).toEqual([
			"2027-02-25,gauze squares,3,,2027-03-03,2.9,N1,by phone",
			"2027-02-25,gauze squares,0.1,,,,,",
		]);
		for (const packs of ["3", "4"])
			expect(rowsOf(came({ packs, restToCome: true }).workbook, "placed.csv")).toHaveLength(1);
	});

	test("on the day it was placed is right; another item's lot of the same name is not its own", () => {
		expect(came({ day: "2027-02-25" }).done).toEqual({ kind: "new_lot" });
		const result = orderReceived(unit("2027-02-25,vinegar,1,,,,,"), { ...delivery, lot: "G1" });
		expect(result.ok && result.done).toEqual({ kind: "new_lot" });
	});

	test("in part, and the rest not to come", () => {
		const { workbook } = came({ packs: "2" });
		expect(rowsOf(workbook, "placed.csv")).toHaveLength(1);
	});

	test.each<[string, Partial<Delivery>, string]>([
		["no packs", { packs: "0" }, "quantity"],
		["packs that are no number", { packs: "many" }, "quantity"],
		["no lot", { lot: " " }, "lot"],
		["before it was ordered", { day: "2027-02-24" }, "day"],
		["no day", { day: "" }, "day"],
		["an expiry that is no day", { expires: "soon" }, "expires"],
		["of an item that is not listed", { line: 5 }, "item"],
		["an order that came already", { line: 3 }, "item"],
		["an order that was given up", { line: 4 }, "item"],
		["an order that is not there", { line: 9 }, "item"],
	])("%s is refused, and nothing is written", (_what, of, field) => {
		const result = orderReceived(
			unit(
				order,
				"2027-02-20,vinegar,3,,2027-02-27,3,V1,",
				"2027-02-20,vinegar,0,,,,,",
				"2027-02-20,ribbon,3,,,,,",
			),
			{ ...delivery, ...of },
		);
		expect(result.ok ? [] : result.wrong.map((wrong) => wrong.field)).toContain(field);
		for (const wrong of result.ok ? [] : result.wrong)
			expect("words" in wrong && wrong.words).toMatch(/\.$/);
	});

	test("a day that is none is not said to be too early", () => {
		const wordsOf = (day: string) => {
			const result = orderReceived(unit(order), { ...delivery, day });
			return result.ok ? [] : result.wrong.map((wrong) => "words" in wrong && wrong.words);
		};
		expect(wordsOf("2027-02-24")).toEqual([
			"2027-02-24 is before the order was placed, on 2027-02-25.",
		]);
		expect(wordsOf("1.3.2027")).toEqual([expect.stringContaining("a date as year-month-day")]);
	});
});

test("an order that is given up keeps its line with 0 packs, and says how many it had", () => {
	const workbook = orderGivenUp(unit("2027-02-25,gauze squares,3,,,,,by phone"), 2);
	expect(rowsOf(workbook, "placed.csv")).toEqual([
		"2027-02-25,gauze squares,0,,,,,by phone; packs ordered: 3",
	]);
	const without = orderGivenUp(unit("2027-02-20,vinegar,1,,,,, ", "2027-02-25,vinegar,2,,,,,"), 3);
	expect(rowsOf(without, "placed.csv")).toEqual([
		"2027-02-20,vinegar,1,,,,,",
		"2027-02-25,vinegar,0,,,,,packs ordered: 2",
	]);
	expect(orderGivenUp(without, 3)).toBe(without);
	expect(rowsOf(orderGivenUp(without, 2), "placed.csv")[0]).toMatch(/,0,,,,,packs ordered: 1$/);
});
