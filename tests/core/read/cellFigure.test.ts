import { describe, expect, test } from "vitest";
import { cellFigure, givenFigure } from "../../../src/core/read/cellFigure.ts";
import { readTable } from "../../../src/core/read/readTable.ts";
import { chlorineSheet } from "../../../src/core/sheets/chlorine.ts";
import { tableOf } from "../smallUnit.ts";

const products = readTable(
	chlorineSheet,
	tableOf(`product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
		blank,liquid,3.5,pct_w_v,,,,
		typed,liquid,3.5,pct_w_v,1.1,1.3,2,no`),
).rows;
/** An older file, which lacks the column altogether. */
const older = readTable(
	chlorineSheet,
	tableOf(
		"product,form,strength,strength_measure,density_kg_per_l,in_use\nold,powder,70,pct_w_w,,no",
	),
).rows;

describe("a cell as a figure says whether somebody typed it", () => {
	test.each([
		["a blank cell is the default", products[0], 2, "default"],
		["a typed value that equals the default is typed", products[1], 3, "typed"],
		["a column that is not there is the default", older[0], 2, "default"],
	])("%s", (_what, row, line, kind) => {
		expect(row && cellFigure(chlorineSheet, row, "fade_factor")).toEqual({
			label: "Loses strength faster than in the laboratory, by",
			unit: "times",
			outcome: { ok: true, value: 1.3 },
			origin: { kind, place: { file: "chlorine.csv", line, column: "fade_factor" } },
		});
	});

	test("a cell without a default is typed", () => {
		expect(products[0] && cellFigure(chlorineSheet, products[0], "strength").origin.kind).toBe(
			"typed",
		);
	});
});

test("a blank cell without a default is no figure where one is asked for", () => {
	const [blank, typed] = products;
	expect(blank && givenFigure(chlorineSheet, blank, "density_kg_per_l")).toBeUndefined();
	expect(typed && givenFigure(chlorineSheet, typed, "density_kg_per_l")?.outcome).toEqual({
		ok: true,
		value: 1.1,
	});
});
