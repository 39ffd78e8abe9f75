import { describe, expect, test } from "vitest";
import { layoutOf, readRow, readRowOnce } from "../../../src/core/read/readRow.ts";
import { headerOf } from "../../../src/core/sheet.ts";
import { birthsSheet } from "../../../src/core/sheets/births.ts";
import { checksSheet } from "../../../src/core/sheets/checks.ts";
import { kitsSheet } from "../../../src/core/sheets/kits.ts";

const header = headerOf(birthsSheet);
const layout = layoutOf(birthsSheet, header, header);
const turned = [...header].reverse();

test("a cell of spaces is blank, and a surplus one is told unless it is empty", () => {
	const names = headerOf(checksSheet);
	const at = layoutOf(checksSheet, names, names);
	const cells = names.map((key) =>
		key === "purpose" ? "  " : key === "kit" ? "A" : key === "checked_at" ? "2027-03-01" : "",
	);
	expect(readRow(cells, at, 2).row).toMatchObject({ value: { purpose: "after_round" } });
	expect(readRow(cells, at, 2).row).toMatchObject({
		defaults: expect.arrayContaining(["purpose"]),
	});
	expect(readRow([...cells, ""], at, 2).surplus).toBeUndefined();
	expect(readRow([...cells, "", " "], at, 2).surplus).toMatchObject({
		...{ code: "too-many-cells", line: 2, column: "" },
	});
});

describe("a row that was read before", () => {
	const cells = ["2027-03-01", "4", ""];

	test("is the same result under the same header, also where that is a new list", () => {
		const copy = [...header];
		const again = readRowOnce(cells, layoutOf(birthsSheet, copy, copy), 2);
		expect(again).toBe(readRowOnce(cells, layout, 2));
		expect(again).toEqual(readRow(cells, layout, 2));
	});

	test.each([
		["in another line", layout, 3],
		["under another header", layoutOf(birthsSheet, turned, turned), 2],
		["under a longer header", layoutOf(birthsSheet, [...header, "x"], [...header, "x"]), 2],
		["in a file of another name", layoutOf({ ...birthsSheet, file: "b.csv" }, header, header), 2],
	])("is read again %s", (_where, other, line) => {
		const before = readRowOnce(cells, layout, 2);
		expect(readRowOnce(cells, other, line)).not.toBe(before);
		expect(readRowOnce(cells, other, line)).toEqual(readRow(cells, other, line));
	});

	test("is read again as a row of another sheet", () => {
		const names = headerOf(kitsSheet);
		readRowOnce(cells, layout, 2);
		const asKits = layoutOf(kitsSheet, names, names);
		expect(readRowOnce(cells, asKits, 2)).toEqual(readRow(cells, asKits, 2));
	});

	test("with other cells is another row", () => {
		expect(readRowOnce(["2027-03-01", "5", ""], layout, 2).row.value.births).toBe(5);
		expect(readRowOnce(cells, layout, 2).row.value.births).toBe(4);
	});
});
