import { expect, test } from "vitest";
import { clockList } from "../../../src/core/values/clockList.ts";
import { clipboardText } from "../../../src/ui/grid/clipboardText.ts";
import { pasted } from "../../../src/ui/grid/pasted.ts";

test("a list of times that is too long loses none of them: it is refused", () => {
	const times = `03:10${" ".repeat(4990)}14:25 15:00`;
	expect(clockList().schema.safeParse(times).success).toBe(false);
	expect(clockList().schema.parse("03:10 14:25")).toEqual([190, 865]);
});

test.each([
	["never closed", '"abc\td\n1\t2\n', ['"abc', "d", "1", "2"]],
	["closed too early", '"5" tube\td\n', ['"5" tube', "d"]],
])("pasted text with a quote mark %s stands as it is", (_what, text, cells) => {
	expect(pasted(text, 0, 0, 5)).toMatchObject({
		cells: cells.map((cell) => ({ text: cell })),
		told: [],
	});
});

test("a blank cell that is copied blanks the cell it is pasted into", () => {
	expect(pasted(clipboardText([[""]], 0, 0, 0, 0), 4, 2, 5).cells).toEqual([
		{ row: 4, column: 2, text: "" },
	]);
	expect(pasted(clipboardText([["x"], [""]], 0, 0, 1, 0), 0, 0, 5).cells).toHaveLength(2);
	expect(pasted("", 0, 0, 5)).toEqual({ cells: [], told: [] });
});
