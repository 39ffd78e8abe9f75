import type { Figure } from "../calculation.ts";
import type { AnyRow, AnyTable } from "../computedTable.ts";
import { problemsOf } from "../outcome.ts";
import type { Problem } from "../problem.ts";
import type { ReadWorkbook } from "../read/readWorkbook.ts";
import { computedSheets } from "../sheets/computedSheets.ts";
import type { IsoDate } from "../values/date.ts";
import type { Workbook } from "../workbook.ts";
import { registerAdvice } from "./births/registerAdvice.ts";
import { productAdvice } from "./chlorine/productAdvice.ts";
import { lastCounted } from "./countsByNow.ts";
import { Findings, inOrder, type Part } from "./findings.ts";
import { checkProblems } from "./kits/checkProblems.ts";
import type { KindCover } from "./kits/coverFigures.ts";
import { kindsWithoutUse } from "./kits/kindFigures.ts";
import { kitAdvice } from "./kits/kitAdvice.ts";
import { pieceAdvice } from "./kits/pieceAdvice.ts";
import { recordProblems } from "./kits/recordProblems.ts";
import { shortStepAdvice } from "./methods/shortStepAdvice.ts";
import { treatmentProblems } from "./methods/treatmentProblems.ts";
import { type PlannedUnit, plannedUnit } from "./plannedUnit.ts";
import { type PlanTables, planTables } from "./planTables.ts";
import { rangeAdvice } from "./rangeAdvice.ts";
import { calibrationAdvice } from "./record/calibrationAdvice.ts";
import { roundAdvice } from "./rounds/roundAdvice.ts";
import { linesNotCounted } from "./store/linesNotCounted.ts";
import { storeAdvice } from "./store/storeAdvice.ts";
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
	/** The problems that are known by now: those of what was typed, and all of them once the plan is worked out. */
	readonly found: readonly Problem[];
	/** Works out a part of what `problems` waits for. @returns whether there is more */
	goOn(): boolean;
}

/** The plan of nothing. */
export const noPlan: Plan = {
	tables: {},
	problems: [],
	made: false,
	kinds: [],
	found: [],
	goOn: () => false,
};

/**
 * Makes the plan: the same inputs, the same output, nothing remembered. What it says is
 * worked out when it is looked at, and the same whenever that is.
 *
 * @param today by the computer's clock, for what cannot be later than it; left out, nothing is held against a clock
 */
export function plan(workbook: Workbook, today?: IsoDate): Plan {
	const read = readToday(workbook, today);
	const planned = plannedUnit(read);
	if (!planned.ok) return withoutDates([...read.problems, ...planned.problems]);
	const { unit, days } = planned.value;
	const made = planTables(unit, days);
	return new WorkedOut(
		byFile([made.dayPlan, ...made.needed, ...made.compared, ...made.views]),
		made.cover.kinds,
		new Findings(read.problems, partsOf(read, planned.value, made)),
	);
}

class WorkedOut implements Plan {
	readonly tables: Plan["tables"];
	readonly kinds: Plan["kinds"];
	readonly #findings: Findings;

	constructor(tables: Plan["tables"], kinds: Plan["kinds"], findings: Findings) {
		this.tables = tables;
		this.kinds = kinds;
		this.#findings = findings;
	}

	get problems(): readonly Problem[] {
		return this.#findings.problems;
	}

	get made(): boolean {
		return this.#findings.made;
	}

	get found(): readonly Problem[] {
		return this.#findings.found;
	}

	goOn(): boolean {
		return this.#findings.goOn();
	}
}

/** What is looked at for problems, one after the other. */
function* partsOf(
	read: ReadWorkbook,
	{ unit, first, last }: PlannedUnit,
	made: PlanTables,
): Generator<Part> {
	const counted = lastCounted(read, last);
	const advised = [
		() => linesNotCounted(read.tables),
		() => kindsWithoutUse(read),
		() => checkProblems(read, counted),
		() => recordProblems(unit, counted),
	];
	for (const problems of advised) yield { problems: problems() };
	yield* partsOfDays(made);
	for (const table of made.needed)
		for (const row of table.rows) yield { problems: unanswered(table, row), isNeeded: true };
	for (const table of made.compared)
		for (const row of table.rows) yield { problems: unanswered(table, row) };
	yield { problems: kitAdvice(unit, made) };
	yield { problems: treatmentProblems(unit) };
	yield { problems: shortStepAdvice(unit) };
	yield { problems: pieceAdvice(unit, first) };
	yield { problems: roundAdvice(unit, made) };
	yield { problems: productAdvice(unit, first) };
	yield { problems: rangeAdvice(read) };
	while (made.fires.goOn()) yield { problems: [] };
	yield { problems: waterAdvice(unit, made) };
	yield { problems: registerAdvice(read, unit.register, first) };
	yield { problems: calibrationAdvice(read) };
	yield { problems: storeAdvice(read, first, last) };
}

/** Of days that are alike one is enough, if all of its cells have an answer. */
function* partsOfDays({ dayPlan, likeDay }: PlanTables): Generator<Part> {
	const answered = new Set<number>();
	for (const [day, row] of dayPlan.rows.entries()) {
		if (answered.has(likeDay(day))) continue;
		const problems = unanswered(dayPlan, row);
		if (problems.length === 0) answered.add(day);
		yield { problems, isNeeded: true };
	}
}

/** The problems for which cells of a row have no answer. */
function unanswered({ sheet }: AnyTable, row: AnyRow): readonly Problem[] {
	const problems: Problem[] = [];
	for (const column in sheet.columns)
		problems.push(...problemsOf((row[column] as Figure<unknown>).outcome));
	return problems;
}

function withoutDates(found: readonly Problem[]): Plan {
	const tables = computedSheets.map((sheet) => ({ sheet, rows: [] }));
	const problems = inOrder(found);
	return { ...noPlan, tables: byFile(tables), problems, found: problems };
}

function byFile(tables: readonly AnyTable[]): Record<string, AnyTable> {
	return Object.fromEntries(tables.map((table) => [table.sheet.file, table]));
}
