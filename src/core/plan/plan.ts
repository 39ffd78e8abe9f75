import type { AnyTable } from "../computedTable.ts";
import { problemsOf } from "../outcome.ts";
import { distinct, type Problem } from "../problem.ts";
import { computedSheets } from "../sheets/computedSheets.ts";
import type { IsoDate } from "../values/date.ts";
import type { Workbook } from "../workbook.ts";
import { registerAdvice } from "./births/registerAdvice.ts";
import { productAdvice } from "./chlorine/productAdvice.ts";
import { checkProblems } from "./kits/checkProblems.ts";
import type { KindCover } from "./kits/coverFigures.ts";
import { kindsWithoutUse } from "./kits/kindFigures.ts";
import { kitAdvice } from "./kits/kitAdvice.ts";
import { pieceAdvice } from "./kits/pieceAdvice.ts";
import { recordProblems } from "./kits/recordProblems.ts";
import { shortStepAdvice } from "./methods/shortStepAdvice.ts";
import { treatmentProblems } from "./methods/treatmentProblems.ts";
import { plannedUnit } from "./plannedUnit.ts";
import { planTables } from "./planTables.ts";
import { rangeAdvice } from "./rangeAdvice.ts";
import { calibrationAdvice } from "./record/calibrationAdvice.ts";
import { roundAdvice } from "./rounds/roundAdvice.ts";
import { storeAdvice } from "./store/storeAdvice.ts";
import { unknownItems } from "./store/useOfItem.ts";
import { readToday } from "./today/readToday.ts";
import { waterAdvice } from "./water/waterAdvice.ts";

/** Everything that follows from a workbook. */
export interface Plan {
	/** The computed sheets, by file name. */
	readonly tables: Readonly<Record<string, AnyTable>>;
	/** Every problem found, each once, errors before advice. */
	readonly problems: readonly Problem[];
	/** False where some number of the plan has no answer that it waits for; one of which nothing is known it can do without. */
	readonly made: boolean;
	/** Each kind of kit: what it has in service, how it comes back, and how many it needs; none where there are no days. */
	readonly kinds: readonly KindCover[];
}

/**
 * Makes the plan: the same inputs, the same output, nothing remembered.
 *
 * @param today by the computer's clock, for what cannot be later than it; left out, nothing is held against a clock
 */
export function plan(workbook: Workbook, today?: IsoDate): Plan {
	const read = readToday(workbook, today);
	const planned = plannedUnit(read);
	if (!planned.ok) return withoutDates([...read.problems, ...planned.problems]);
	const { unit, days, first, last } = planned.value;
	const made = planTables(unit, days);
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
			...treatmentProblems(unit),
			...shortStepAdvice(unit),
			...pieceAdvice(unit, first),
			...roundAdvice(unit, made),
			...productAdvice(unit, first),
			...rangeAdvice(read),
			...waterAdvice(unit, made),
			...registerAdvice(read, unit.register, first),
			...calibrationAdvice(read),
			...storeAdvice(read, first, last),
		]),
		made: missing.every(({ weight }) => weight === "advice"),
		kinds: made.cover.kinds,
	};
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
	return { tables: byFile(tables), problems: inOrder(problems), made: false, kinds: [] };
}

function byFile(tables: readonly AnyTable[]): Record<string, AnyTable> {
	return Object.fromEntries(tables.map((table) => [table.sheet.file, table]));
}

function inOrder(problems: readonly Problem[]): Problem[] {
	const advised = (p: Problem) => Number(p.weight === "advice");
	return distinct(problems).sort((a, b) => advised(a) - advised(b));
}
