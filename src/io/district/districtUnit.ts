import type { ComputedRow } from "../../core/computedTable.ts";
import { valueIn } from "../../core/outcome.ts";
import { unitLine, unreadLine, type Whose } from "../../core/plan/district/unitLine.ts";
import { type Plan, plan } from "../../core/plan/plan.ts";
import { rowsOf } from "../../core/plan/rowsOf.ts";
import { readToday } from "../../core/plan/today/readToday.ts";
import { distinct, type Problem } from "../../core/problem.ts";
import type { ReadWorkbook } from "../../core/read/readWorkbook.ts";
import { orderSheet } from "../../core/sheets/order.ts";
import type { unitsSheet } from "../../core/sheets/units.ts";
import type { OrderRow } from "../../core/units/needOf.ts";
import type { IsoDate } from "../../core/values/date.ts";
import { valuesOf } from "../../core/valuesOf.ts";
import { migrated } from "../migrated.ts";
import type { ReadFiles } from "../readFiles.ts";

/** A unit as its district sees it. */
export interface DistrictUnit {
	readonly whose: Whose;
	readonly line: ComputedRow<typeof unitsSheet>;
	/** Of reading and planning together, each once. */
	readonly problems: readonly Problem[];
	/** What it was planned from and what came of it; undefined where nothing of the unit counts. */
	readonly planned?: { readonly read: ReadWorkbook; readonly plan: Plan };
}

/**
 * Plans one unit in pieces, so that a page can stay alive in between.
 *
 * Where a file of it cannot be read, or a question is open, no number of the unit counts:
 * without the file the numbers would be others.
 *
 * @param path where its workbook lies, which is its name where it has none
 */
export function* unitInPieces(
	path: string,
	{ workbook, problems: found, questions }: ReadFiles,
	today: IsoDate | undefined,
): Generator<void, DistrictUnit> {
	const now = migrated(workbook);
	const read = readToday(now, today);
	const { unit_name: named } = read.settings;
	const unit = (named.origin.kind === "typed" && valueIn(named)) || path;
	const whose: Whose = { unit, path };
	const isRead =
		questions.length === 0 &&
		Object.keys(workbook.tables).length > 0 &&
		found.every(({ weight }) => weight === "advice");
	if (!isRead) return unreadUnit(whose, found);
	yield;
	const made = plan(now, today);
	do yield;
	while (made.goOn());
	// The list that takes longest, here for a piece of its own.
	rowsOf(made, orderSheet);
	yield;
	const problems = distinct([...found, ...made.problems]);
	const line = unitLine(whose, made, read, problems);
	return { whose, line, problems, planned: { read, plan: made } };
}

/** Plans one unit at once. @param path as `unitInPieces` has it */
export function districtUnit(
	path: string,
	read: ReadFiles,
	today: IsoDate | undefined,
): DistrictUnit {
	const pieces = unitInPieces(path, read, today);
	let piece = pieces.next();
	while (!piece.done) piece = pieces.next();
	return piece.value;
}

/** A unit of which nothing counts, and why. */
export function unreadUnit(whose: Whose, found: readonly Problem[]): DistrictUnit {
	const problems = distinct(found);
	return { whose, line: unreadLine(whose, problems), problems };
}

/** What a plan orders, as values that can be added up elsewhere. */
export function ordersOf(made: Plan): OrderRow[] {
	return rowsOf(made, orderSheet).map((row) => valuesOf(orderSheet, row));
}
