import type { AnyTable } from "../../core/computedTable.ts";
import { valueIn } from "../../core/outcome.ts";
import { unitLine, unreadLine, type Whose } from "../../core/plan/district/unitLine.ts";
import { unitMonths } from "../../core/plan/district/unitMonths.ts";
import { unitNeeds } from "../../core/plan/district/unitNeeds.ts";
import { type Plan, plan } from "../../core/plan/plan.ts";
import { rowsOf } from "../../core/plan/rowsOf.ts";
import { readToday } from "../../core/plan/today/readToday.ts";
import { distinct, type Problem } from "../../core/problem.ts";
import { asNote } from "../../core/read/asNote.ts";
import { headerOf } from "../../core/sheet.ts";
import { orderSheet } from "../../core/sheets/order.ts";
import { problemsSheet } from "../../core/sheets/problems.ts";
import { type UnitState, unitsSheet } from "../../core/sheets/units.ts";
import { unitsNeedsSheet } from "../../core/sheets/unitsNeeds.ts";
import { unitsTrendSheet } from "../../core/sheets/unitsTrend.ts";
import type { ItemNames } from "../../core/units/itemNames.ts";
import type { TrendRow } from "../../core/units/monthSums.ts";
import type { OrderRow } from "../../core/units/needOf.ts";
import type { IsoDate } from "../../core/values/date.ts";
import { valuesOf } from "../../core/valuesOf.ts";
import { computedLines } from "../../io/computedCsv.ts";
import { migrated } from "../../io/migrated.ts";
import type { ReadFiles } from "../../io/readFiles.ts";
import { csvLines } from "../../io/writeCsv.ts";
import { byPlace } from "../problemLine.ts";

/** What a district keeps of a unit: lines of its files as text, and what is added up. */
export interface UnitDone {
	readonly name: string;
	readonly path: string;
	readonly firstDay: IsoDate | undefined;
	readonly state: UnitState;
	/** CSV lines, by the file they belong to. */
	readonly lines: Readonly<Record<string, string>>;
	readonly orders: readonly OrderRow[];
	readonly months: readonly TrendRow[];
}

/**
 * Plans one unit, and keeps what its district asks for.
 *
 * Where a file of it cannot be read, or a question is open, no number of the unit counts:
 * without the file the numbers would be others.
 *
 * @param path where its workbook lies, which is its name where it has none
 */
export function unitDone(
	path: string,
	{ workbook, problems: found, questions }: ReadFiles,
	nameOf: ItemNames,
	today: IsoDate | undefined,
): UnitDone {
	const now = migrated(workbook);
	const read = readToday(now, today);
	const { unit_name: named } = read.settings;
	const unit = (named.origin.kind === "typed" && valueIn(named)) || path;
	const whose: Whose = { unit, path };
	const isRead =
		questions.length === 0 &&
		Object.keys(workbook.tables).length > 0 &&
		found.every(({ weight }) => weight === "advice");
	if (!isRead) return unread(whose, found);
	const made = plan(now, today);
	const problems = distinct([...found, ...made.problems]);
	const line = unitLine(whose, made, read, problems);
	const months = unitMonths(whose, read, nameOf);
	return {
		name: whose.unit,
		path,
		firstDay: valueIn(read.settings.plan_start),
		state: valueIn(line.state) ?? "not_planned",
		lines: linesOf(
			whose,
			problems,
			{ sheet: unitsSheet, rows: [line] },
			{ sheet: unitsNeedsSheet, rows: unitNeeds(whose, made, nameOf) },
			{ sheet: unitsTrendSheet, rows: months },
		),
		orders: ordersOf(made),
		months: months.map((row) => valuesOf(unitsTrendSheet, row)),
	};
}

/** A unit of which nothing counts, and why. */
export function unread(whose: Whose, problems: readonly Problem[]): UnitDone {
	const all = distinct(problems);
	const row = unreadLine(whose, all);
	return {
		name: whose.unit,
		path: whose.path,
		firstDay: undefined,
		state: "not_read",
		lines: linesOf(whose, all, { sheet: unitsSheet, rows: [row] }),
		orders: [],
		months: [],
	};
}

function ordersOf(made: Plan): OrderRow[] {
	return rowsOf(made, orderSheet).map((row) => valuesOf(orderSheet, row));
}

function linesOf(whose: Whose, problems: readonly Problem[], ...tables: readonly AnyTable[]) {
	return {
		...Object.fromEntries(tables.map((table) => [table.sheet.file, computedLines(table)])),
		"units-problems.csv": problemLines(whose, problems),
	};
}

const problemKeys = headerOf(problemsSheet) as (keyof Problem)[];

/** Problems as lines of units-problems.csv, by file and line. */
export function problemLines({ unit, path }: Whose, problems: readonly Problem[]): string {
	return csvLines(
		[...problems]
			.sort(byPlace)
			.map((found) => [unit, path, ...problemKeys.map((key) => asNote(String(found[key] ?? "")))]),
	);
}
