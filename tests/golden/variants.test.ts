import { readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { Calculation, Figure } from "../../src/core/calculation.ts";
import { type Plan, plan } from "../../src/core/plan/plan.ts";
import { everything } from "../core/contentOf.ts";
import { calculationsBehind } from "../core/planCells.ts";
import { calculationWords } from "./calculationWords.ts";
import { expectGolden } from "./expectGolden.ts";
import { variants } from "./variants.ts";

/**
 * Whole plans of small units, cell by cell, with every problem and every calculation behind
 * them, as they were. No figure was checked one by one: other tests hold the figures to what
 * is outside the program; this one shows what a change changes that was not meant to.
 */
const GOLDEN = "tests/golden/variants";
const MOST_ROWS = 12;

function summary(made: Plan): Record<string, unknown> {
	const { problems, made: isMade, ...sheets } = everything(made);
	const cells = Object.entries(sheets).map(([file, rows]) => [file, ends(rows as string[][])]);
	const found = new Set<Calculation>();
	const seen = new Set<Figure<unknown>>();
	for (const table of Object.values(made.tables))
		for (const row of table.rows)
			for (const cell of Object.values(row)) calculationsBehind(cell, found, seen);
	const calculations = new Set([...found].map(calculationWords));
	const words = (problems as Plan["problems"]).map(
		({ file, line, column, weight, code, received, allowed, message }) =>
			[file, line, column, weight, code, received, allowed, message].join(" | "),
	);
	return {
		isMade,
		...Object.fromEntries(cells),
		problems: words,
		calculations: [...calculations].sort(),
	};
}

/** Long sheets by their first and last rows, and how many there are. */
function ends(rows: readonly string[][]): string[] {
	const lines = rows.map((cells) => cells.join("; "));
	if (lines.length <= MOST_ROWS) return lines;
	const half = MOST_ROWS / 2;
	return [...lines.slice(0, half), `${lines.length} rows`, ...lines.slice(-half)];
}

const fileOf = (name: string) => `${name.replace(/\W+/g, "-")}.json`;

test.each(Object.entries(variants))("%s", (name, workbook) => {
	expectGolden(join(GOLDEN, fileOf(name)), summary(plan(workbook)));
});

test("no file is left of a unit that is not tried any more", () => {
	expect(readdirSync(GOLDEN)).toEqual(Object.keys(variants).map(fileOf).sort());
});
