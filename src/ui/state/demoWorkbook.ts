import type { Workbook } from "../../core/workbook.ts";
import { readCsv } from "../../io/readCsv.ts";

const texts = import.meta.glob<string>("../../../sample-csv/*.csv", {
	query: "?raw",
	import: "default",
	eager: true,
});

/** The invented workbook that the page opens with, built in from sample-csv. */
export function demoWorkbook(): Workbook {
	const tables = Object.entries(texts).map(([path, text]) => {
		const file = path.slice(path.lastIndexOf("/") + 1);
		return [file, readCsv(file, text).table] as const;
	});
	return { tables: Object.fromEntries(tables) };
}
