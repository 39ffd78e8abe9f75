import { valueIn } from "../../outcome.ts";
import { readWorkbook } from "../../read/readWorkbook.ts";
import type { StrengthReadingsRow } from "../../sheets/strengthReadings.ts";
import type { IsoDate } from "../../values/date.ts";
import type { Workbook } from "../../workbook.ts";
import { plannedUnit } from "../plannedUnit.ts";
import { type LotFigures, lotFigures } from "./lotFigures.ts";

/** The chlorine lots of a workbook, for pictures and print-outs that look further than a sheet's cells. */
export interface StoreLots {
	readonly firstDay: IsoDate;
	/** Strength to mix, %. */
	readonly targetPct: number;
	readonly lots: readonly LotFigures[];
	readonly readings: readonly StrengthReadingsRow[];
}

/** Undefined where the workbook has no first day or no strength to mix. */
export function storeLots(workbook: Workbook): StoreLots | undefined {
	const read = readWorkbook(workbook);
	const planned = plannedUnit(read);
	if (!planned.ok) return undefined;
	const { unit, first } = planned.value;
	const targetPct = valueIn(unit.startPct);
	if (targetPct === undefined) return undefined;
	return {
		firstDay: first,
		targetPct,
		lots: lotFigures(unit, first),
		readings: read.tables.strengthReadings.rows.map(({ value }) => value),
	};
}
