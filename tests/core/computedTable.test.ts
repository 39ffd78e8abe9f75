import { expect, test } from "vitest";
import { nameFigure } from "../../src/core/calculation.ts";
import { type ComputedRow, onDemand } from "../../src/core/computedTable.ts";
import { plan } from "../../src/core/plan/plan.ts";
import { rowsOf } from "../../src/core/plan/rowsOf.ts";
import { stockAheadSheet } from "../../src/core/sheets/stockAhead.ts";
import { smallUnit } from "./smallUnit.ts";

type Row = ComputedRow<typeof stockAheadSheet>;
const name = { item: nameFigure("", "soap"), date: nameFigure("", "2027-03-01") };
const amounts = { usable: nameFigure("", 3), reserve: nameFigure("", null) };

// What the compiler must refuse: each line below fails `npm run types` where it no longer does.
const refused: Row[] = [
	// @ts-expect-error a missing cell
	{ ...name, usable: nameFigure("", 3) },
	// @ts-expect-error a misspelt cell
	{ ...name, ...amounts, reserves: nameFigure("", 1) },
	// @ts-expect-error a number where the column holds words
	{ ...name, ...amounts, item: nameFigure("", 3) },
	// @ts-expect-error an empty text where a number is blank
	{ ...name, ...amounts, usable: nameFigure("", "") },
];
// @ts-expect-error a misspelt cell where a row is read
const misread = (row: Row) => row.reserves;

test("a row that is whole and rightly typed is taken; one that is not is refused by the compiler", () => {
	const whole: Row = { ...name, ...amounts };
	expect(Object.keys(whole).sort()).toEqual(Object.keys(stockAheadSheet.columns).sort());
	expect(refused).toHaveLength(4);
	expect(misread(whole)).toBeUndefined();
});

test("rows are worked out when first looked at, and once", () => {
	let times = 0;
	const table = onDemand(stockAheadSheet, () => {
		times++;
		return [{ ...name, ...amounts }];
	});
	expect(times).toBe(0);
	expect(table.rows).toBe(table.rows);
	expect(times).toBe(1);
});

test("the rows of a sheet are the plan's own; of a table that is not that sheet, none", () => {
	const made = plan(smallUnit());
	expect(rowsOf(made, stockAheadSheet)).toBe(made.tables["stock-ahead.csv"]?.rows);
	expect(rowsOf(made, { ...stockAheadSheet })).toEqual([]);
	expect(rowsOf({ ...made, tables: {} }, stockAheadSheet)).toEqual([]);
});
