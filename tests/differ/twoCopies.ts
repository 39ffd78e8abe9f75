import type { Copy } from "../../src/core/merge/descent.ts";
import { rootDescent } from "../../src/core/merge/rootDescent.ts";
import { withSave } from "../../src/core/merge/withSave.ts";
import { typedSheets } from "../../src/core/sheets/typedSheets.ts";
import type { TextTable, Workbook } from "../../src/core/workbook.ts";
import { randomNumbers } from "../reference/randomNumbers.ts";
import { anyCell, oneOf, type Random } from "./anyCell.ts";

const SAVES = 2;

/** Two people go on with one workbook, each saving twice: cells changed, rows taken out, put in and moved. */
export function twoCopies(number: number, base: Workbook): readonly [Copy, Copy] {
	const random = randomNumbers(number);
	const root: Copy = { workbook: base, descent: rootDescent(base) };
	const first = saved(random, root, "before");
	return [goneOn(random, first, "A"), goneOn(random, first, "B")];
}

function goneOn(random: Random, from: Copy, who: string): Copy {
	let copy = from;
	for (let n = 1; n <= SAVES; n++) copy = saved(random, copy, `${who}${n}`);
	return copy;
}

function saved(random: Random, { workbook, descent }: Copy, id: string): Copy {
	const tables = typedSheets.flatMap(({ file, columns }): [string, TextTable][] => {
		const table = workbook.tables[file];
		return table ? [[file, edited(random, table, columns, id)]] : [];
	});
	const now = { ...workbook, tables: Object.fromEntries(tables) };
	return { workbook: now, descent: withSave(descent, now, { id, at: "2027-03-01T10:00", by: id }) };
}

type Columns = (typeof typedSheets)[number]["columns"];

function edited(random: Random, table: TextTable, columns: Columns, who: string): TextTable {
	const rows = table.rows.flatMap((row) => {
		const chance = random();
		if (chance < 0.05) return [];
		if (chance < 0.1) return [row, row.map((text, at) => (at === 0 ? `${text} ${who}` : text))];
		if (chance > 0.25) return [row];
		const [key, column] = oneOf(random, Object.entries(columns));
		const at = table.header.indexOf(key);
		const text = anyCell(random, { ...column, key });
		return [row.map((old, i) => (i === at ? text : old))];
	});
	if (random() < 0.2 && rows.length > 1) rows.push(...rows.splice(0, 1));
	return { ...table, rows };
}
