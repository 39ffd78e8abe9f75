import { describe, expect, test } from "vitest";
import { entered } from "../../../../src/core/edit/store/entered.ts";
import { storeBooks } from "../../../../src/core/edit/store/storeBooks.ts";
import { measureOf, type StoreEntry } from "../../../../src/core/edit/store/storeEntry.ts";
import type { Workbook } from "../../../../src/core/workbook.ts";
import { amountOf } from "../../../../src/ui/format/amountOf.ts";
import { counted, listed } from "../../../../src/ui/format/counted.ts";
import { Store } from "../../../../src/ui/state/store.ts";
import { orderLines } from "../../../../src/ui/subjects/order/orderLines.ts";
import { orderHeadline } from "../../../../src/ui/subjects/order/orderWords.ts";
import { doneWords, wrongWords } from "../../../../src/ui/subjects/store/enteredWords.ts";
import { stepped, stockOfItem } from "../../../../src/ui/subjects/store/stockOfItem.ts";
import { storekeeperLists } from "../../../../src/ui/subjects/store/storekeeperLists.ts";
import { blank, LOTS } from "../../../core/edit/enteredInStore.ts";
import { smallUnit } from "../../../core/smallUnit.ts";

const unit = (files = {}) => smallUnit({ "lots.csv": LOTS, ...files });

/** Makes one entry after another and gives the workbook, and what was said last. */
function made(...entries: Partial<StoreEntry>[]): { workbook: Workbook; said: string } {
	let workbook = unit();
	let said = "";
	for (const entry of entries) {
		const whole = { ...blank, ...entry };
		const result = entered(workbook, whole);
		if (!result.ok) throw new Error(result.wrong.map((each) => wrongWords(each, whole)).join());
		workbook = result.workbook;
		const { items } = storeBooks(workbook);
		said = doneWords(result.done, whole, measureOf(items, whole.item));
	}
	return { workbook, said };
}

describe("entering into the books", () => {
	test("a count says its difference against the books of that day, whatever came later", () => {
		const { said } = made(
			{ kind: "issue", quantity: "40", day: "2027-03-05" },
			{ kind: "count", quantity: "130", day: "2027-03-02" },
		);
		expect(said).toContain("Counted 130 pieces; the books said 140: 10 less than that.");
		expect(said).toContain("On hand now: 90 pieces.");
	});

	test("issuing more than there is asks for a count", () => {
		expect(made({ kind: "issue", quantity: "150" }).said).toContain(
			"10 more than the books held: count this lot. On hand now: 0 pieces.",
		);
	});

	test("a lot on the way is counted once when it arrives, and its note is kept", () => {
		const { workbook, said } = made({
			kind: "receipt",
			item: "liquid",
			lot: "L2",
			quantity: "8",
			note: "two bottles broken",
		});
		expect(said).toBe("liquid, lot L2: arrived on Tue 2 Mar, 8 L, 2 less than ordered.");
		expect(workbook.tables["lots.csv"]?.rows[2]).toEqual([
			"liquid",
			"L2",
			"8",
			"2027-02-10",
			"2027-03-02",
			"2027-03-02",
			"2027-08-10",
		]);
		const { said: again } = made(
			{ kind: "receipt", item: "liquid", lot: "L2", quantity: "8", note: "n" },
			{ kind: "receipt", item: "liquid", lot: "L2", quantity: "5", day: "2027-03-03" },
		);
		expect(again).toContain("On hand now: 13 L.");
		expect(workbook.tables["journal.csv"]?.rows[0]).toContain("two bottles broken");
	});

	test("a lot on the way has to be received before anything else", () => {
		expect(() => made({ item: "liquid", lot: "L2", kind: "issue", quantity: "1" })).toThrow(
			"Lot L2 is on the way and due on Sat 20 Mar: enter it as received first.",
		);
	});
});

test("the order names what is urgent first, then what is late, then what to order now", () => {
	const { workbook } = made({ kind: "count", quantity: "5" });
	const { state } = new Store(workbook);
	const lines = orderLines(state);
	expect(lines[0]).toMatchObject({ item: "gauze squares", urgency: "emergency" });
	const order = lines.map(({ urgency }) => urgency);
	const rank = ["emergency", "late", "now", "unknown", "enough"];
	expect(order).toEqual([...order].sort((a, b) => rank.indexOf(a) - rank.indexOf(b)));
	expect(orderHeadline(state)).toMatch(
		/^Urgent: .*gauze squares.* before an order can arrive; order \d+ packs/,
	);
});

test("what is late is named, and on the first day of a new workbook nothing is", () => {
	const headline = (files = {}) => {
		const { state } = new Store(
			unit({
				"lots.csv": `${LOTS.split("\n")[0]}\nliquid,L1,6.5,2027-01-10,2027-02-20,,2027-07-10`,
				...files,
			}),
		);
		const liquid = orderLines(state).find(({ item }) => item === "liquid");
		return [liquid?.urgency, orderHeadline(state)];
	};
	expect(headline()).toEqual(["now", expect.not.stringContaining("late")]);
	const kept = { "past-plans.csv": "date,measure_of,expected,set_aside\n2027-02-22,births,5,9" };
	expect(headline(kept)).toEqual(["late", expect.stringContaining("the order of liquid is late")]);
});

test("an item whose number waits is neither forgotten nor taken for enough", () => {
	const usage = "item,basis,quantity,note\nvinegar,descale,many,";
	const others = "gauze squares,piece,2,\nclean gloves,worker_round,2,";
	const { state } = new Store(unit({ "usage.csv": `${usage}\n${others}` }));
	const vinegar = orderLines(state).find(({ item }) => item === "vinegar");
	expect(vinegar).toMatchObject({ urgency: "unknown", packs: undefined });
	expect(vinegar?.waitsFor).toContain("many");
	expect(orderHeadline(state)).toContain("1 item needs a number");
	// Items of which no line is left wait as well.
	const alone = new Store(unit({ "usage.csv": usage })).state;
	expect(orderHeadline(alone)).toContain("3 items need a number");
});

test("the storekeeper sees what is past use, what is on the way and what should have come", () => {
	const late = LOTS.replace("2027-03-20", "2027-02-20");
	const lists = storekeeperLists(new Store(unit({ "lots.csv": late })).state);
	const lines = (word: string) => lists.find((list) => list.word === word)?.lines ?? [];
	expect(lines("USE FIRST")[0]).toMatchObject({ item: "vinegar, lot V1", by: "do not use" });
	expect(lines("ON THE WAY")[0]).toMatchObject({
		item: "liquid, lot L2",
		amount: "2 packs (10 L)",
		by: "was due Sat 20 Feb",
	});
});

test("a lot that came before its day is no arrival of the picture", () => {
	const arrivals = (lots: string) =>
		stockOfItem(new Store(unit({ "lots.csv": lots })).state, "liquid")?.arrivals;
	expect(arrivals(LOTS)).toEqual([{ date: "2027-03-20", lot: "L2", quantity: 10 }]);
	expect(arrivals(LOTS.replace(",,2027-03-20", ",2027-02-27,2027-03-20"))).toEqual([]);
});

test("pieces that a check found missing are on the storekeeper's list until a check passes", () => {
	const head =
		"checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,relief_opens,suction_holds,note";
	const piecesAfter = (...checks: string[]) =>
		storekeeperLists(new Store(unit({ "checks.csv": [head, ...checks].join("\n") })).state).find(
			({ word }) => word === "PIECES",
		)?.lines;
	expect(piecesAfter("2027-02-28,A,3,yes,,,,,,")).toMatchObject([
		{ item: "bag set, kit A", amount: "2 pieces missing" },
	]);
	expect(piecesAfter("2027-02-28 08:00,A,3,yes,,,,,,", "2027-02-28 10:00,A,5,yes,,,,,,")).toEqual(
		[],
	);
});

test("months show the last week of each, weeks no more than thirteen", () => {
	const weeks = Array.from({ length: 20 }, (_, i) => ({
		date: `2027-0${1 + Math.floor(i / 4)}-0${1 + (i % 4)}`,
		usable: i,
	}));
	expect(stepped(weeks, "weeks")).toHaveLength(13);
	expect(stepped(weeks, "months").map((at) => at.usable)).toEqual([3, 7, 11, 15, 19]);
});

test("amounts and lists are written as people say them", () => {
	expect(amountOf(1, "piece")).toBe("1 piece");
	expect(amountOf(1200, "pair")).toBe("1\u202f200 pairs");
	expect(amountOf(2.54, "L")).toBe("2.5 L");
	expect(counted(1, "pack")).toBe("1 pack");
	expect(counted(2, "pack")).toBe("2 packs");
	expect(listed(["a", "b", "c", "d"], 2)).toBe("a, b and 2 more");
	expect(listed(["a", "b"], 2)).toBe("a and b");
});
