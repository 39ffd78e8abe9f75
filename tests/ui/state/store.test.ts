import { expect, test, vi } from "vitest";
import { emptyWorkbook } from "../../../src/core/edit/emptyWorkbook.ts";
import { withTexts } from "../../../src/core/edit/withTexts.ts";
import { Store } from "../../../src/ui/state/store.ts";
import { birthsTexts } from "../../../src/ui/subjects/week/birthsOfDays.ts";
import { smallUnit } from "../../core/smallUnit.ts";

const day = (row: number, column: string, text: string) => ({ row, column, text });

test("undo and redo walk through all sheets, and an edit forgets what was undone", () => {
	const empty = emptyWorkbook();
	const store = new Store(empty);
	store.edit(withTexts(empty, "births.csv", [day(0, "date", "2027-03-01")]));
	const one = store.state.workbook;
	store.edit(withTexts(one, "kits.csv", [day(0, "kit", "K1")]));
	store.undo();
	expect(store.state.workbook).toEqual(one);
	store.undo();
	expect(store.state).toMatchObject({ workbook: empty, canUndo: false, canRedo: true });
	store.redo();
	expect(store.state.workbook).toEqual(one);
	store.edit(withTexts(one, "kits.csv", [day(0, "kit", "K2")]));
	expect(store.state.canRedo).toBe(false);
});

test("an edit leaves the workbook before it as it was", () => {
	const empty = emptyWorkbook();
	const before = JSON.stringify(empty);
	const next = withTexts(empty, "births.csv", [day(2, "note", "late"), day(0, "births", "3")]);
	expect(next.tables["births.csv"]?.rows).toEqual([
		["", "3", ""],
		["", "", ""],
		["", "", "late"],
	]);
	expect(JSON.stringify(empty)).toBe(before);
});

test("births of a day go into its row, or into a new one; a blank makes no row", () => {
	const empty = emptyWorkbook();
	const store = new Store(withTexts(empty, "births.csv", [day(0, "date", "2027-03-01")]));
	const texts = birthsTexts(store.state, [
		{ date: "2027-03-01", text: "5" },
		{ date: "2027-03-02", text: "" },
		{ date: "2027-03-03", text: "7" },
	]);
	const { workbook } = store.state;
	expect(withTexts(workbook, "births.csv", texts).tables["births.csv"]?.rows).toEqual([
		["2027-03-01", "5", ""],
		["2027-03-03", "7", ""],
	]);
});

test("a mistake of this program found while the plan is worked out is told, and drawn over by an undo", () => {
	const empty = emptyWorkbook();
	const store = new Store(empty);
	const seen: (string | undefined)[] = [];
	store.subscribe(({ programError }) => seen.push(programError));
	store.edit(withTexts(empty, "births.csv", [day(0, "date", "2027-03-01")]));
	vi.spyOn(store.state.plan, "goOn").mockImplementation(() => {
		throw new Error("a mistake of ours");
	});
	const drawn: unknown[] = [];
	expect(store.whole((state) => drawn.push(state))()).toBe(false);
	expect(drawn).toEqual([]);
	expect(seen).toEqual([undefined, "a mistake of ours"]);
	expect(store.state.plan.tables).toEqual({});
	store.undo();
	expect(store.state.programError).toBe(undefined);
});

test("a mistake found while cells are drawn is told, and drawing goes on without a plan", () => {
	const empty = emptyWorkbook();
	const store = new Store(empty);
	const drawn: number[] = [];
	store.subscribe(({ plan }) => {
		if ("day-plan.csv" in plan.tables) throw new Error("a mistake of ours");
		drawn.push(Object.keys(plan.tables).length);
	});
	store.edit(withTexts(empty, "births.csv", [day(0, "date", "2027-03-01")]));
	expect(store.state.programError).toBe("a mistake of ours");
	expect(drawn).toEqual([0]);
});

test("drawing that needs the whole plan waits until it is worked out", () => {
	const store = new Store(smallUnit());
	const drawn: number[] = [];
	const piece = store.whole(({ plan }) => drawn.push(plan.found.length));
	expect(piece()).toBe(true);
	expect(drawn).toEqual([]);
	while (piece());
	expect(drawn).toEqual([store.state.plan.problems.length]);
});
