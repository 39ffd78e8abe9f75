import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { usedGridRules } from "../../src/build/usedGridRules.ts";
import { builtSite } from "../browser/site.ts";

/** What is left of a rule of a file: its selectors; nothing where it was taken out. */
function left(selectors: string[], file: string): string[] {
	let removed = false;
	const rule = {
		selectors,
		source: { input: { file } },
		remove() {
			removed = true;
		},
	};
	usedGridRules.Rule(rule);
	return removed ? [] : rule.selectors;
}

const theirs = "/node_modules/handsontable/dist/handsontable.css";

test.each([
	["of a menu", [".htContextMenu .wtBorder", ".htSubmenu"], theirs, []],
	["of another library's table", [".handsontable.col-lg-1", ".handsontable .table th"], theirs, []],
	["of both", [".handsontable td", ".columnSorting"], theirs, [".handsontable td"]],
	["of a cell", [".handsontable td.area"], theirs, [".handsontable td.area"]],
	["of our own", [".table", ".listbox"], "/src/ui/style/sheet.css", [".table", ".listbox"]],
])("a rule %s", (_, selectors, file, expected) => {
	expect(left([...selectors], file)).toEqual(expected);
});

test("the workbook's style has the grid's cells and none of its menus", () => {
	const style = readFileSync(join(builtSite(), "workbook.css"), "utf8");
	expect(style).toContain(".handsontable td.area");
	expect(style).not.toMatch(/htContextMenu|htMobileEditorContainer|columnSorting|col-lg-/);
});
