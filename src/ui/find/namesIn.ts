import { tableOf } from "../../core/edit/withTexts.ts";
import { say } from "../../core/say.ts";
import { sheetOf } from "../../core/sheets/sheetOf.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import { pageHelp } from "../shell/pageHelp.ts";
import { questions } from "../shell/questions.ts";
import { titleOf } from "../shell/titleOf.ts";
import type { State } from "../state/store.ts";
import { type Findable, findable } from "./findable.ts";

/** Names of sheets and pages and of their columns, and the open problems: all that is known without working a sheet out. */
export function namesIn(state: State): Findable[] {
	const files = questions.flatMap(({ sheets }) => sheets);
	const named = files.flatMap((file) => [pageOf(file), ...columnsOf(state, file)]);
	const problems = state.plan.problems.map((problem) =>
		findable(problem, {
			row: problem.line === null ? "" : say`line ${problem.line}`,
			column: say`problem`,
			text: problem.message,
		}),
	);
	return [...named, ...problems];
}

/** A sheet or page is found by its name and by what it is for. */
function pageOf(file: string): Findable {
	const title = titleOf(file);
	const text = sheetOf(file)?.about ?? pageHelp[file] ?? title;
	const column = sheetOf(file) ? say`sheet` : say`page`;
	return findable({ file, line: null, column: "" }, { column, text }, `${title} ${file}`);
}

function columnsOf(state: State, file: string): Findable[] {
	const sheet = sheetOf(file);
	if (!sheet || file === unitSheet.file) return [];
	const keys = new Set([...Object.keys(sheet.columns), ...tableOf(state.workbook, file).header]);
	return [...keys].map((key) => {
		const { label = key, unit = "" } = sheet.columns[key] ?? {};
		const text = unit === "" ? label : `${label} (${unit})`;
		return findable({ file, line: null, column: key }, { column: say`column`, text }, key);
	});
}
