import { describe, expect, test } from "vitest";
import { entered } from "../../../src/core/edit/store/entered.ts";
import { storeBooks } from "../../../src/core/edit/store/storeBooks.ts";
import {
	itemNames,
	measureOf,
	quantityOf,
	type StoreEntry,
} from "../../../src/core/edit/store/storeEntry.ts";
import { LONGEST_NOTE } from "../../../src/core/values/note.ts";
import { smallUnit } from "../smallUnit.ts";
import { blank, LOTS } from "./enteredInStore.ts";

const unit = () => smallUnit({ "lots.csv": LOTS });

function doneOf(entry: Partial<StoreEntry>) {
	const result = entered(unit(), { ...blank, ...entry });
	return result.ok ? result.done : undefined;
}

test.each<[string, Partial<StoreEntry>, unknown]>([
	["a count", { quantity: "130" }, { kind: "count", books: 140, onHand: 130 }],
	["an issue", { kind: "issue", quantity: "40" }, { kind: "issue", books: 140, onHand: 100 }],
	[
		"more issued than there is",
		{ kind: "issue", quantity: "150" },
		{ kind: "issue", books: 140, onHand: 0 },
	],
	["a loss", { kind: "loss", quantity: "40" }, { kind: "loss", books: 140, onHand: 100 }],
	["a receipt", { kind: "receipt", quantity: "5" }, { kind: "receipt", books: 140, onHand: 145 }],
	[
		"a lot that was on its way",
		{ kind: "receipt", item: "liquid", lot: "L2", quantity: "8" },
		{ kind: "arrival", ordered: 10 },
	],
	[
		"a lot that is new",
		{ kind: "receipt", lot: "G2", isNew: true, quantity: "5" },
		{ kind: "new_lot" },
	],
])("%s: what the books said, and what is on hand now", (_what, entry, done) => {
	expect(doneOf(entry)).toEqual(done);
});

test("what cannot be is refused where it stands, and the workbook is left alone", () => {
	const wrong = (entry: Partial<StoreEntry>) => {
		const result = entered(unit(), { ...blank, quantity: "1", ...entry });
		return result.ok ? [] : result.wrong.map(({ field }) => field);
	};
	expect(wrong({ quantity: "many" })).toEqual(["quantity"]);
	expect(wrong({ day: "" })).toEqual(["day"]);
	expect(wrong({ item: "", lot: "" })).toEqual(["item", "lot"]);
	expect(wrong({ lot: "G9" })).toEqual(["lot"]);
	expect(wrong({ note: "x".repeat(LONGEST_NOTE + 1) })).toEqual(["note"]);
	expect(wrong({ isNew: true })).toEqual(["lot"]);
	expect(wrong({ item: "liquid", lot: "L2", kind: "issue" })).toEqual(["lot"]);
	expect(wrong({ isNew: true, lot: "N", expires: "soon" })).toEqual(["expires"]);
	expect(wrong({ isNew: true, lot: "N", made: "soon" })).toEqual(["made"]);
	expect(wrong({ made: "soon", expires: "soon" })).toEqual([]);
});

test("a lot on its way is refused with its day, an unknown one and one that is there already in words", () => {
	const why = (entry: Partial<StoreEntry>) => {
		const result = entered(unit(), { ...blank, quantity: "1", ...entry });
		return result.ok ? [] : result.wrong;
	};
	const coming = { item: "liquid", lot: "L2", kind: "issue" } as const;
	expect(why(coming)).toEqual([{ field: "lot", arrives: "2027-03-20" }]);
	expect(why({ ...coming, day: "2027-03-20" })).toEqual([]);
	expect(why({ lot: "L1" })).toEqual([
		{ field: "lot", words: "Choose a lot; one that is not in the list is entered as new." },
	]);
	expect(why({ isNew: true, lot: " G1 " })).toMatchObject([
		{ words: expect.stringContaining("gauze squares has a lot G1 in the books already") },
	]);
	expect(why({ item: "" })).toContainEqual({ field: "item", words: "Choose an item." });
});

test("of a lot that came before its day, what is issued before that day is written", () => {
	const came = LOTS.replace(",,2027-03-20", ",2027-02-27,2027-03-20");
	const entry = { ...blank, item: "liquid", lot: "L2", kind: "issue", quantity: "1" } as const;
	const result = entered(smallUnit({ "lots.csv": came }), entry);
	expect(result).toMatchObject({ ok: true, done: { kind: "issue", books: 10, onHand: 9 } });
});

describe("what is written", () => {
	const JOURNAL = "day,item,lot,entry,quantity,note";
	const rowsAfter = (entry: Partial<StoreEntry>, journal = JOURNAL) => {
		const result = entered(smallUnit({ "lots.csv": LOTS, "journal.csv": journal }), {
			...blank,
			...entry,
		});
		if (!result.ok) throw new Error(JSON.stringify(result.wrong));
		const rows = (file: string) => result.workbook.tables[file]?.rows.map((row) => row.join());
		return { lots: rows("lots.csv") ?? [], journal: rows("journal.csv") ?? [], done: result.done };
	};
	const before = rowsAfter({ quantity: "1" }).lots;

	test("a count is a line of the journal, and the lots stay", () => {
		expect(rowsAfter({ lot: " G1 ", quantity: " 130 ", note: "with Ama" })).toMatchObject({
			lots: before,
			journal: ["2027-03-02,gauze squares,G1,count,130,with Ama"],
		});
	});

	test("beside what the lot's own lines say, up to the day and in all", () => {
		const journal = [
			JOURNAL,
			"2027-03-02,gauze squares,G1,issue,10,",
			"2027-03-03,gauze squares,G1,issue,30,",
			"2027-03-01,gauze squares,G2,issue,7,",
			"2027-03-01,liquid,G1,issue,9,",
		].join("\n");
		const { done } = rowsAfter({ kind: "issue", quantity: "20" }, journal);
		expect(done).toEqual({ kind: "issue", books: 130, onHand: 80 });
	});

	test("a lot that was on its way has its quantity and its day in its own line, and its note in the journal", () => {
		const arrival = { kind: "receipt", item: "liquid", lot: "L2", quantity: " 8 " } as const;
		const arrived = before.with(2, "liquid,L2,8,2027-02-10,2027-03-02,2027-03-02,2027-08-10");
		expect(rowsAfter(arrival)).toMatchObject({ lots: arrived, journal: [] });
		expect(rowsAfter({ ...arrival, note: "one bottle broken" })).toMatchObject({
			lots: arrived,
			journal: ["2027-03-02,liquid,L2,count,8,one bottle broken"],
		});
	});

	test("of a lot on its way of which the journal has a line already, a receipt is one more line", () => {
		const line = "2027-03-20,liquid,L2,receipt,4,";
		const arrival = { kind: "receipt", item: "liquid", lot: "L2", quantity: "8" } as const;
		expect(rowsAfter({ ...arrival, day: "2027-03-21" }, `${JOURNAL}\n${line}`)).toMatchObject({
			lots: before,
			journal: [line, "2027-03-21,liquid,L2,receipt,8,"],
		});
	});

	test("a receipt of a lot that was never on its way is a line of the journal, also where no day says that it came", () => {
		const lots =
			"item,lot,quantity,made_on,received_on,arrives_on,expires_on\n\tgauze squares,G1,140,,,,";
		const own = smallUnit({ "lots.csv": lots, "journal.csv": JOURNAL });
		const result = entered(own, { ...blank, kind: "receipt", quantity: "5" });
		expect(result).toMatchObject({ ok: true, done: { kind: "receipt", books: 140, onHand: 145 } });
		expect(result.ok && result.workbook.tables["lots.csv"]).toEqual(own.tables["lots.csv"]);
	});

	test("spaces are no note", () => {
		const fresh = { isNew: true, lot: "N", quantity: "5", note: "  " } as const;
		expect(rowsAfter(fresh).journal).toEqual([]);
	});

	test("a new lot is a line of the list, with its days", () => {
		const fresh = { isNew: true, lot: " N ", quantity: " 5 ", made: "2027-02-01" } as const;
		expect(rowsAfter({ ...fresh, expires: "2029-01-31", note: "gift" })).toMatchObject({
			lots: [...before, "gauze squares,N,5,2027-02-01,2027-03-02,,2029-01-31"],
			journal: ["2027-03-02,gauze squares,N,count,5,gift"],
		});
	});
});

test("the items that a storekeeper chooses from, each once, with their measures", () => {
	const book = smallUnit({
		"items.csv": "group,item,measure\nother,soap,mL\nother,,\nother,soap,L",
	});
	expect(itemNames(book)).toEqual(["soap"]);
	expect(itemNames(smallUnit({ "items.csv": null }))).toEqual([]);
	const { items } = storeBooks(unit());
	expect([measureOf(items, "liquid"), measureOf(items, "ribbon")]).toEqual(["L", ""]);
	expect(quantityOf({ ...blank, quantity: "2,5" })).toBe(2.5);
});
