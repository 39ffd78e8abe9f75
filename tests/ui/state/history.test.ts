import { describe, expect, test, vi } from "vitest";
import { emptyWorkbook } from "../../../src/core/edit/emptyWorkbook.ts";
import { withTexts } from "../../../src/core/edit/withTexts.ts";
import type { Workbook } from "../../../src/core/workbook.ts";
import { type State, Store } from "../../../src/ui/state/store.ts";

// Thousands of plans would be these tests' whole time, and are not what they are about.
vi.mock("../../../src/core/plan/plan.ts", () => ({
	plan: () => ({ tables: {}, problems: [], made: false, kinds: [] }),
}));

const STEPS = 10_000;
const noted = (workbook: Workbook, text: string): Workbook =>
	withTexts(workbook, "births.csv", [{ row: 0, column: "note", text }]);
const note = ({ workbook }: State) => workbook.tables["births.csv"]?.rows[0]?.[2];

describe("steps back and forward", () => {
	test(`${STEPS} of them, as they were made`, () => {
		const store = new Store({ tables: {} });
		for (let step = 1; step <= STEPS; step++) store.edit(noted(store.state.workbook, `${step}`));
		for (let step = STEPS - 1; step >= 1; step--) {
			store.undo();
			if (note(store.state) !== `${step}`) throw new Error(`step ${step}: ${note(store.state)}`);
		}
		store.undo();
		expect(store.state.workbook).toEqual({ tables: {} });
		expect(store.state).toMatchObject({ canUndo: false, canRedo: true, unsaved: false });
		for (let step = 1; step <= STEPS; step++) store.redo();
		expect(note(store.state)).toBe(`${STEPS}`);
		expect(store.state.canRedo).toBe(false);
	});

	test("steps share the rows of what an edit left alone, and what was worked out from the rest is let go", () => {
		const start = emptyWorkbook();
		const store = new Store(start);
		store.edit(noted(start, "one"));
		const one = store.state.workbook;
		store.edit(noted(one, "two"));
		store.undo();
		const { tables } = store.state.workbook;
		expect(tables["kits.csv"]).toBe(start.tables["kits.csv"]);
		expect(tables["births.csv"]?.rows).toBe(one.tables["births.csv"]?.rows);
		expect(tables["births.csv"]).not.toBe(one.tables["births.csv"]);
	});
});

describe("where a workbook is saved", () => {
	const handle = (name: string) => ({ name }) as FileSystemFileHandle;
	const file = (name: string) => ({ handle: handle(name), seen: new Uint8Array() });

	test("undo back to what was saved is saved, and every other step is not", () => {
		const store = new Store(emptyWorkbook());
		store.edit(noted(store.state.workbook, "one"));
		const { book, workbook } = store.state;
		store.edit(noted(workbook, "typed while the file was written"));
		store.markSaved(book, { saved: workbook, file: file("a.zip") });
		expect(store.state.unsaved).toBe(true);
		store.undo();
		expect(store.state.unsaved).toBe(false);
		store.undo();
		expect(store.state.unsaved).toBe(true);
		expect(store.state.book.in.file?.handle.name).toBe("a.zip");
	});

	test("undo over an opening leads back to the other workbook and to its own file", () => {
		const store = new Store(emptyWorkbook());
		store.edit(noted(store.state.workbook, "first"));
		store.markSaved(store.state.book, { saved: store.state.workbook, file: file("first.zip") });
		const second = noted(emptyWorkbook(), "second");
		store.open(second, [], { saved: second, file: file("second.zip") });
		store.edit(noted(second, "second, changed"));
		store.undo();
		expect(store.state.book.in.file?.handle.name).toBe("second.zip");
		store.undo();
		expect(note(store.state)).toBe("first");
		expect(store.state.book.in.file?.handle.name).toBe("first.zip");
		expect(store.state.unsaved).toBe(false);
		store.redo();
		expect(store.state.book.in.file?.handle.name).toBe("second.zip");
	});

	test("a workbook opened anew, and a draft, have no file", () => {
		const store = new Store(emptyWorkbook());
		store.markSaved(store.state.book, { saved: store.state.workbook, file: file("a.zip") });
		store.open(emptyWorkbook());
		expect(store.state.book.in.file).toBeUndefined();
		expect(store.state.unsaved).toBe(false);
		store.open(emptyWorkbook(), [], {});
		expect(store.state.unsaved).toBe(true);
	});
});
