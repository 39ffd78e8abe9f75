import type { AnyTable } from "../../core/computedTable.ts";
import { valueIn } from "../../core/outcome.ts";
import type { Whose } from "../../core/plan/district/unitLine.ts";
import { unitMonths } from "../../core/plan/district/unitMonths.ts";
import { unitNeeds } from "../../core/plan/district/unitNeeds.ts";
import type { Problem } from "../../core/problem.ts";
import { type UnitState, unitsSheet } from "../../core/sheets/units.ts";
import { unitsNeedsSheet } from "../../core/sheets/unitsNeeds.ts";
import { unitsProblemsSheet } from "../../core/sheets/unitsProblems.ts";
import { unitsTrendSheet } from "../../core/sheets/unitsTrend.ts";
import type { ItemNames } from "../../core/units/itemNames.ts";
import type { TrendRow } from "../../core/units/monthSums.ts";
import type { OrderRow } from "../../core/units/needOf.ts";
import type { IsoDate } from "../../core/values/date.ts";
import { valuesOf } from "../../core/valuesOf.ts";
import { computedLines } from "../../io/computedCsv.ts";
import {
	type DistrictUnit,
	districtUnit,
	ordersOf,
	unreadUnit,
} from "../../io/district/districtUnit.ts";
import { problemLines } from "../../io/district/problemLines.ts";
import type { ReadFiles } from "../../io/readFiles.ts";

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

/** Plans one unit, and keeps what its district asks for. @param path as unitInPieces has it */
export function unitDone(
	path: string,
	given: ReadFiles,
	nameOf: ItemNames,
	today: IsoDate | undefined,
): UnitDone {
	const unit = districtUnit(path, given, today);
	if (!unit.planned) return kept(unit);
	const { read, plan } = unit.planned;
	const months = unitMonths(unit.whose, read, nameOf);
	const needs = unitNeeds(unit.whose, plan, nameOf);
	return {
		...kept(
			unit,
			{ sheet: unitsNeedsSheet, rows: needs },
			{ sheet: unitsTrendSheet, rows: months },
		),
		firstDay: valueIn(read.settings.plan_start),
		orders: ordersOf(plan),
		months: months.map((row) => valuesOf(unitsTrendSheet, row)),
	};
}

/** A unit of which nothing counts, and why. */
export function unread(whose: Whose, problems: readonly Problem[]): UnitDone {
	return kept(unreadUnit(whose, problems));
}

function kept({ whose, line, problems }: DistrictUnit, ...more: readonly AnyTable[]): UnitDone {
	const tables = [{ sheet: unitsSheet, rows: [line] }, ...more];
	return {
		name: whose.unit,
		path: whose.path,
		firstDay: undefined,
		state: valueIn(line.state) ?? "not_planned",
		lines: {
			...Object.fromEntries(tables.map((table) => [table.sheet.file, computedLines(table)])),
			[unitsProblemsSheet.file]: problemLines(whose, problems),
		},
		orders: [],
		months: [],
	};
}
