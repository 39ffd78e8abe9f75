import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { codesOf, rowsOf } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

const BAD = ["bad-cell"];

/** The cells of a sheet's rows for the liquid that have no value, with the code of the reason. */
function withoutValue(settings: Record<string, string>, file: string): Record<string, unknown>[] {
	const rows = rowsOf(plan(unitWith(settings)), file);
	return rows.flatMap((row) => {
		const isLiquid = row.item?.outcome.ok && row.item.outcome.value === "liquid";
		const cells = Object.entries(row).filter(([, cell]) => !cell.outcome.ok);
		return isLiquid ? [Object.fromEntries(cells.map(([key, cell]) => [key, codesOf(cell)]))] : [];
	});
}

// calculations.md: a missing or impossible input gives no result and a named problem, never 0.
test("between orders of which nobody can read the days, nothing is told of the use over them", () => {
	const settings = { review_days: "often" };
	expect(withoutValue(settings, "order.csv")).toMatchObject([
		{ use_expected: BAD, target_stock: BAD, order_packs: BAD, order_by: BAD, remark: BAD },
	]);
	// The stock itself does not hang on it.
	for (const row of withoutValue(settings, "stock-ahead.csv"))
		expect(row).toEqual({ reserve: BAD });
});

test("where nobody can read how far ahead stock is looked at, what was not found is not known, and not never", () => {
	expect(withoutValue({}, "order.csv")).toEqual([{}]);
	// With so few births the liquid lasts longer than the days that its order looks ahead.
	const settings = { stock_horizon_days: "far", births_per_day: "4" };
	expect(withoutValue(settings, "order.csv")).toEqual([
		{ run_out_on: BAD, take_run_out_on: BAD, full_run_out_on: BAD },
	]);
});
