import { tableOf } from "../../core/edit/withTexts.ts";
import { say } from "../../core/say.ts";
import { sheetOf } from "../../core/sheets/sheetOf.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import { problemWords } from "../format/problemWords.ts";
import type { Page } from "../page.ts";
import { pages } from "../pages.ts";
import { FIRST_LINE } from "../sheet/cellOf.ts";
import type { State } from "../state/store.ts";
import { type Findable, findable } from "./findable.ts";

/** Names of sheets and pages and of their columns, and the open problems: all that is known without working a sheet out. */
export function namesIn(state: State): Findable[] {
	const names = pages.flatMap((page) => [
		named(page),
		...rowsOf(page),
		...columnsOf(state, page.file),
	]);
	const problems = state.plan.problems.map((problem) =>
		findable(problem, {
			row: problem.line === null ? "" : say`line ${problem.line}`,
			column: say`problem`,
			text: problemWords(problem),
		}),
	);
	return [...names, ...problems];
}

/** A sheet or page is found by its name and by what it is for. */
function named({ file, title, about = title }: Page): Findable {
	const column = sheetOf(file) ? say`sheet` : say`page`;
	return findable({ file, line: null, column: "" }, { column, text: about }, `${title} ${file}`);
}

/** The figures of such a page stand in sheets too; of itself only its rows are found. */
function rowsOf({ file, rowNames = [] }: Page): Findable[] {
	return rowNames.map((text, row) =>
		findable({ file, line: row + FIRST_LINE, column: "" }, { text }),
	);
}

function columnsOf(state: State, file: string): Findable[] {
	const sheet = sheetOf(file);
	if (!sheet || file === unitSheet.file) return [];
	const keys = new Set([...Object.keys(sheet.columns), ...tableOf(state.workbook, file).header]);
	const shown = [...keys].filter((key) => !sheet.columns[key]?.behind);
	return shown.map((key) => {
		const { label = key, unit = "" } = sheet.columns[key] ?? {};
		const text = unit === "" ? label : `${label} (${unit})`;
		return findable({ file, line: null, column: key }, { column: say`column`, text }, key);
	});
}
