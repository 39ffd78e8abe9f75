import { expect, test } from "vitest";
import { withRow } from "../../../src/core/edit/withRow.ts";
import { mergeCopies } from "../../../src/core/merge/mergeCopies.ts";
import { readCopy } from "../../../src/io/history/readCopy.ts";
import { zipWorkbook } from "../../../src/io/zipWorkbook.ts";
import { copyNow, descentOf } from "../../../src/ui/state/descentOf.ts";
import { keptDescent } from "../../../src/ui/state/keptDescent.ts";
import { Store } from "../../../src/ui/state/store.ts";
import { smallUnit } from "../../core/smallUnit.ts";
import { readZip } from "../../io/readZip.ts";

/** Another window with the file that this one saved, worked in there and saved again. */
function savedElsewhere(store: Store, note: string): Uint8Array {
	const { workbook, descent } = readCopy(readZip(saved(store)));
	const other = new Store(workbook);
	other.open(workbook, [], { saved: workbook, descent });
	other.edit(withRow(other.state.workbook, "kits.csv", { note }, 1));
	return saved(other);
}

/** Saves as the page does. */
function saved(store: Store): Uint8Array {
	const { workbook, book } = store.state;
	const { descent } = copyNow(store.state);
	store.markSaved(book, { ...book.in, saved: workbook, descent });
	return zipWorkbook(workbook, undefined, descent);
}

function meet(store: Store, bytes: Uint8Array) {
	const together = mergeCopies(copyNow(store.state), readCopy(readZip(bytes)));
	store.bringTogether(together.workbook, together.descent);
	return together;
}

const notes = (store: Store) => store.state.workbook.tables["kits.csv"]?.rows.map((row) => row[4]);

test("is one step: undo gives back exactly what was, and where it came from; redo brings it again", () => {
	const store = new Store(smallUnit());
	const theirs = savedElsewhere(store, "lent");
	store.edit(withRow(store.state.workbook, "kits.csv", { note: "torn" }, 0));
	const before = store.state;
	const { conflicts } = meet(store, theirs);
	expect(conflicts).toEqual([]);
	expect(notes(store)).toEqual(["torn", "lent", "", "torn mask"]);
	expect(store.state.unsaved).toBe(true);
	const saves = descentOf(store.state.book.in)?.saves.length;
	store.undo();
	expect(store.state.workbook).toEqual(before.workbook);
	expect(store.state.book).toBe(before.book);
	expect(descentOf(store.state.book.in)).toBe(descentOf(before.book.in));
	store.redo();
	expect(notes(store)).toEqual(["torn", "lent", "", "torn mask"]);
	expect(descentOf(store.state.book.in)?.saves.length).toBe(saves);
});

test("what is saved after an undo is a change like any other: the other copy does not bring it back", () => {
	const store = new Store(smallUnit());
	saved(store);
	store.edit(withRow(store.state.workbook, "kits.csv", { note: "a slip" }, 0));
	const withSlip = saved(store);
	store.undo();
	saved(store);
	meet(store, withSlip);
	expect(notes(store)?.[0]).toBe("");
});

test("a workbook saved again unchanged gives the same file", () => {
	const store = new Store(smallUnit());
	store.edit(withRow(store.state.workbook, "kits.csv", { note: "torn" }, 0));
	expect(saved(store)).toEqual(saved(store));
});

test("lines entered share a mark; lines of opened files stay as they are", () => {
	const line = { at: "2027-03-01 10:00", kit: "A", what: "used" };
	const ids = ({ state }: Store) =>
		state.workbook.tables["uses.csv"]?.rows.map((row) => row.at(-1));
	const store = new Store(smallUnit());
	store.edit(withRow(store.state.workbook, "uses.csv", line));
	store.edit(withRow(store.state.workbook, "uses.csv", { ...line, kit: "B" }));
	const [mark = "", other] = ids(store) ?? [];
	expect(mark).toMatch(/^[0-9a-z]{6}$/);
	expect(other).toBe(mark);
	const opened = new Store(smallUnit());
	opened.takeIn(withRow(smallUnit(), "uses.csv", line), []);
	expect(ids(opened)).toEqual([""]);
});

test("a draft keeps where it comes from, unless it was damaged", () => {
	const store = new Store(smallUnit());
	saved(store);
	store.edit(withRow(store.state.workbook, "kits.csv", { note: "torn" }, 0));
	saved(store);
	const descent = descentOf(store.state.book.in);
	expect(keptDescent(structuredClone(descent))).toEqual(descent);
	for (const bad of [
		undefined,
		7,
		{},
		{ saves: [], sheets: { "kits.csv": 7 } },
		{ saves: [7], sheets: {} },
	])
		expect(keptDescent(bad)).toBe(undefined);
	const short = { ...descent?.sheets["kits.csv"], origins: [] };
	expect(keptDescent({ ...descent, sheets: { "kits.csv": short } })).toBe(undefined);
});
