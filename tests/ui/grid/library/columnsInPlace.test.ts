import { expect, test } from "vitest";
import type { GridModel } from "../../../../src/ui/grid/gridModel.ts";
import { columnsInPlace } from "../../../../src/ui/grid/library/columnsInPlace.ts";

/** A grid of columns so wide. */
function gridOf(widths: readonly number[], rowName?: () => string): GridModel {
	return {
		name: "",
		columns: widths.map((width) => ({ key: "", label: "", unit: "", numeric: false, width })),
		rowCount: 0,
		headerHeight: 0,
		rowHeight: () => 0,
		...(rowName && { rowName }),
		cell: () => ({ kind: "label", text: "" }),
	};
}

test.each([
	["the first where a column of figures fits beside it", [228, 90], 328, 1],
	["none where it would be a pixel too narrow", [229, 90], 328, 0],
	["the first where nobody knows the room yet", [400, 90], 0, 1],
	["none where there is none", [], 328, 0],
] as const)("stays in place: %s", (_, widths, room, count) => {
	expect(columnsInPlace(gridOf(widths), room)).toBe(count);
});

test("the numbers of the rows take 44 pixels of the room", () => {
	expect(columnsInPlace(gridOf([184, 90], String), 328)).toBe(1);
	expect(columnsInPlace(gridOf([185, 90], String), 328)).toBe(0);
});
