import type { AnyTable } from "../computedTable.ts";
import { answer, type Outcome, problemsOf } from "../outcome.ts";
import { distinct, type Problem } from "../problem.ts";
import { type ReadWorkbook, readWorkbook } from "../read/readWorkbook.ts";
import { computedSheets } from "../sheets/computedSheets.ts";
import { dayNumber, type IsoDate, isoDate } from "../values/date.ts";
import type { Workbook } from "../workbook.ts";
import { registerAdvice } from "./births/registerAdvice.ts";
import { productAdvice } from "./chlorine/productAdvice.ts";
import { checkProblems } from "./kits/checkProblems.ts";
import { kindsWithoutUse } from "./kits/kindFigures.ts";
import { kitAdvice } from "./kits/kitAdvice.ts";
import { pieceAdvice } from "./kits/pieceAdvice.ts";
import { recordProblems } from "./kits/recordProblems.ts";
import { planTables } from "./planTables.ts";
import { calibrationAdvice } from "./record/calibrationAdvice.ts";
import { roundAdvice } from "./rounds/roundAdvice.ts";
import { storeAdvice } from "./store/storeAdvice.ts";
import { unknownItems } from "./store/useOfItem.ts";
import { unitFigures } from "./unitFigures.ts";
import { waterAdvice } from "./water/waterAdvice.ts";

/** Everything that follows from a workbook. */
export interface Plan {
	/** The computed sheets, by file name. */
	readonly tables: Readonly<Record<string, AnyTable>>;
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
	const first = dates.value[0] as IsoDate;
	const last = dates.value.at(-1) as IsoDate;
	const unit = unitFigures(read, first, last);
	const made = planTables(unit, dates.value);
	const missing = made.needed.flatMap(unanswered);
	return {
		tables: byFile([...made.needed, ...made.compared, ...made.views]),
		problems: inOrder([
			...read.problems,
			...unknownItems(read.tables),
			...kindsWithoutUse(read),
			...checkProblems(read, last),
			...recordProblems(unit, last),
			...missing,
			...made.compared.flatMap(unanswered),
			...kitAdvice(unit, made),
			...pieceAdvice(unit, first),
			...roundAdvice(unit, made),
			...productAdvice(unit, first),
			...waterAdvice(unit),
			...registerAdvice(read, unit.register, first),
			...calibrationAdvice(read),
			...storeAdvice(read, first, last),
		]),
		made: missing.length === 0,
	};
}

function datesOf({ settings }: ReadWorkbook): Outcome<IsoDate[]> {
	const { plan_start: start, plan_days: days } = settings;
	if (!start.outcome.ok) return start.outcome;
	if (!days.outcome.ok) return days.outcome;
	const first = dayNumber(start.outcome.value) as number;
	return answer(Array.from({ length: days.outcome.value }, (_, day) => isoDate(first + day)));
}

/** The problems for which cells of a table have no answer. */
function unanswered(table: AnyTable): readonly Problem[] {
	const problems: Problem[] = [];
	for (const row of table.rows)
		for (const { outcome } of Object.values(row)) problems.push(...problemsOf(outcome));
	return problems;
}

function withoutDates(problems: readonly Problem[]): Plan {
	const tables = computedSheets.map((sheet) => ({ sheet, rows: [] }));
	return { tables: byFile(tables), problems: inOrder(problems), made: false };
}

function byFile(tables: readonly AnyTable[]): Record<string, AnyTable> {
	return Object.fromEntries(tables.map((table) => [table.sheet.file, table]));
}

function inOrder(problems: readonly Problem[]): Problem[] {
	const advised = (p: Problem) => Number(p.weight === "advice");
	return distinct(problems).sort((a, b) => advised(a) - advised(b));
}
