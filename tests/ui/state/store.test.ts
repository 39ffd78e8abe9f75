import { expect, test } from "vitest";
import { emptyWorkbook } from "../../../src/core/edit/emptyWorkbook.ts";
import { withTexts } from "../../../src/core/edit/withTexts.ts";
import { Store } from "../../../src/ui/state/store.ts";
import { birthsTexts } from "../../../src/ui/subjects/week/birthsOfDays.ts";

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
