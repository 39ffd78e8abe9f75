import { valueIn } from "../../outcome.ts";
import { readWorkbook } from "../../read/readWorkbook.ts";
import type { StrengthReadingsRow } from "../../sheets/strengthReadings.ts";
import type { IsoDate } from "../../values/date.ts";
import type { Workbook } from "../../workbook.ts";
import { unitFigures } from "../unitFigures.ts";
import { type LotFigures, lotFigures } from "./lotFigures.ts";

/** The chlorine lots of a workbook, for pictures and print-outs that look further than a sheet's cells. */
export interface StoreLots {
	readonly firstDay: IsoDate;
	readonly targetPct: number;
	readonly lots: readonly LotFigures[];
	readonly readings: readonly StrengthReadingsRow[];
}

/** Undefined where the workbook has no first day or no strength wanted. */
export function storeLots(workbook: Workbook): StoreLots | undefined {
	const read = readWorkbook(workbook);
	const firstDay = valueIn(read.settings.plan_start);
	const targetPct = valueIn(read.settings.target_strength_pct);
	if (firstDay === undefined || targetPct === undefined) return undefined;
	return {
		firstDay,
		targetPct,
		lots: lotFigures(unitFigures(read, firstDay, firstDay), firstDay),
		readings: read.tables.strengthReadings.rows.map(({ value }) => value),
	};
}
