import type { ComputedTable } from "./computedTable.ts";
import { answer, type Outcome, problemsOf } from "./outcome.ts";
import { planAdvice } from "./plan/planAdvice.ts";
import { planTables } from "./plan/planTables.ts";
import { unknownItems } from "./plan/supplyFigures.ts";
import { unitFigures } from "./plan/unitFigures.ts";
import { distinct, type Problem } from "./problem.ts";
import { type ReadWorkbook, readWorkbook } from "./read/readWorkbook.ts";
import { computedSheets } from "./sheets/computedSheets.ts";
import { mixingSheet } from "./sheets/mixing.ts";
import { addDays, type IsoDate } from "./values/date.ts";
import type { Workbook } from "./workbook.ts";

/** Everything that follows from a workbook. */
export interface Plan {
	/** The computed sheets, by file name. */
	readonly tables: Readonly<Record<string, ComputedTable>>;
	/** Every problem found, each once, errors before advice. */
	readonly problems: readonly Problem[];
	/** False where some number of the plan has no answer. */
	readonly made: boolean;
}

/** Makes the plan: one immutable input, one output, nothing remembered. */
export function plan(workbook: Workbook): Plan {
	const read = readWorkbook(workbook);
	const dates = datesOf(read);
	if (!dates.ok) return withoutDates([...read.problems, ...dates.problems]);
	const unit = unitFigures(read);
	const made = planTables(unit, dates.value);
	return {
		tables: byFile(made.tables),
		problems: inOrder([
			...read.problems,
			...unknownItems(read.tables),
			...made.tables.flatMap(unanswered),
			...planAdvice(unit, made),
		]),
		// What a product that is not in use would make is for comparing; the plan does not wait for it.
		made: made.tables.every(
			(table) => table.sheet === mixingSheet || unanswered(table).length === 0,
		),
	};
}

function datesOf({ settings }: ReadWorkbook): Outcome<IsoDate[]> {
	const { plan_start: start, plan_days: days } = settings;
	if (!start.outcome.ok) return start.outcome;
	if (!days.outcome.ok) return days.outcome;
	const first = start.outcome.value;
	return answer(Array.from({ length: days.outcome.value }, (_, day) => addDays(first, day)));
}

/** The problems for which cells of a table have no answer. */
function unanswered(table: ComputedTable): readonly Problem[] {
	return table.rows.flatMap((row) =>
		Object.values(row).flatMap((cell) => problemsOf(cell.outcome)),
	);
}

function withoutDates(problems: readonly Problem[]): Plan {
	const tables = computedSheets.map((sheet) => ({ sheet, rows: [] }));
	return { tables: byFile(tables), problems: inOrder(problems), made: false };
}

function byFile(tables: readonly ComputedTable[]): Record<string, ComputedTable> {
	return Object.fromEntries(tables.map((table) => [table.sheet.file, table]));
}

function inOrder(problems: readonly Problem[]): Problem[] {
	const advised = (p: Problem) => Number(p.weight === "advice");
	return distinct(problems).sort((a, b) => advised(a) - advised(b));
}
