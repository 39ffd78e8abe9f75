import { writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { Calculation, Figure } from "../../src/core/calculation.ts";
import { type Plan, plan } from "../../src/core/plan/plan.ts";
import { calculationWords } from "./calculationWords.ts";
import { everything } from "./contentOf.ts";
import { calculationsBehind } from "./planCells.ts";
import golden from "./variants.json" with { type: "json" };
import { variants } from "./variants.ts";

/**
 * Whole plans of small units, cell by cell, with every problem and every calculation behind
 * them, as they were. No figure was checked one by one: other tests hold the figures to what
 * is outside the program; this one shows what a change changes that was not meant to.
 *
 * UPDATE_GOLDEN=1 npx vitest run tests/core/variants.test.ts takes the present ones over;
 * read the difference before committing it.
 */
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

const present = Object.fromEntries(
	Object.entries(variants).map(([name, workbook]) => [name, () => summary(plan(workbook))]),
);

if (process.env.UPDATE_GOLDEN === "1") {
	const all = Object.entries(present).map(([name, of]) => [name, of()]);
	writeFileSync(
		"tests/core/variants.json",
		`${JSON.stringify(Object.fromEntries(all), null, "\t")}\n`,
	);
}

test.each(Object.keys(present))("%s", (name) => {
	const known = golden as Readonly<Record<string, unknown>>;
	expect(JSON.parse(JSON.stringify(present[name]?.()))).toEqual(known[name]);
});
