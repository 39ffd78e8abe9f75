import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Columns } from "../../core/column.ts";
import type { Problem } from "../../core/problem.ts";
import { readTable } from "../../core/read/readTable.ts";
import type { Sheet } from "../../core/sheet.ts";
import { districtNamesSheet } from "../../core/sheets/districtNames.ts";
import { districtStockSheet } from "../../core/sheets/districtStock.ts";
import type { Answers } from "../../io/fileQuestion.ts";
import { readSheetApart } from "../../io/readSheetApart.ts";

/** Reads what a district says of itself beside its units' workbooks, where it does. */
export async function districtTables(folder: string, answers: Answers) {
	const names = await tableIn(folder, districtNamesSheet, answers);
	const stock = await tableIn(folder, districtStockSheet, answers);
	const problems = [...names.problems, ...stock.problems];
	return {
		names: names.rows,
		stock: stock.rows,
		problems,
		/** False where a line of them is not understood: the sums would be others. */
		isRead: problems.every(({ weight }: Problem) => weight === "advice"),
	};
}

async function tableIn<C extends Columns>(folder: string, sheet: Sheet<C>, answers: Answers) {
	const none = readTable(sheet, undefined);
	const bytes = await readFile(join(folder, sheet.file)).catch((trouble: { code?: string }) => {
		if (trouble.code === "ENOENT") return undefined;
		throw trouble;
	});
	if (!bytes) return { rows: none, problems: [] };
	const { rows, problems } = readSheetApart(sheet, bytes, answers);
	return { rows: rows ?? none, problems };
}
