import { nameFigure } from "../../calculation.ts";
import { containerLitres } from "../../chlorine/containerLitres.ts";
import type { Preparation } from "../../chlorine/measureOut.ts";
import type { ComputedRow } from "../../computedTable.ts";
import { valueIn } from "../../outcome.ts";
import { nowhere } from "../../problem.ts";
import { say } from "../../say.ts";
import type { mixingSheet } from "../../sheets/mixing.ts";
import type { StrengthReadingsRow } from "../../sheets/strengthReadings.ts";
import type { IsoDate } from "../../values/date.ts";
import type { Workbook } from "../../workbook.ts";
import { plannedUnit } from "../plannedUnit.ts";
import { readToday } from "../today/readToday.ts";
import { litresOfPreparation } from "./litresOfPreparation.ts";
import { type LotFigures, lotFigures } from "./lotFigures.ts";
import { preparationWith } from "./lotPreparation.ts";
import { mixingTable } from "./mixingTable.ts";

/** The chlorine lots of a workbook, for pictures and print-outs that look further than a sheet's cells. */
export interface StoreLots {
	readonly firstDay: IsoDate;
	/** Strength to mix, %. */
	readonly targetPct: number;
	readonly lots: readonly LotFigures[];
	readonly readings: readonly StrengthReadingsRow[];
	/** One preparation for each size of container on the first day, from a lot; "" by the label. */
	readonly sizesOf: (product: string, lot: string) => readonly Preparation[];
	/** The mixing sheet as it is on another day than the first: lots have faded, come or gone out of date. */
	readonly mixingOn: (day: IsoDate) => readonly ComputedRow<typeof mixingSheet>[];
}

/**
 * Undefined where the workbook has no first day or no strength to mix.
 *
 * @param today as for the plan
 */
export function storeLots(workbook: Workbook, today?: IsoDate): StoreLots | undefined {
	const read = readToday(workbook, today);
	const planned = plannedUnit(read);
	if (!planned.ok) return undefined;
	const { unit, first } = planned.value;
	const targetPct = valueIn(unit.startPct);
	if (targetPct === undefined) return undefined;
	const lots = lotFigures(unit, first);
	return {
		firstDay: first,
		targetPct,
		lots,
		sizesOf: (name, lot) => {
			const of = lots.find(
				({ product, lot: row }) => product.row.value.product === name && row.value.lot === lot,
			);
			const byLabel = unit.products.find(({ row }) => row.value.product === name)?.strength;
			const strength = of?.strengthOn(first) ?? byLabel;
			if (!strength) return [];
			return containerLitres(valueIn(litresOfPreparation(read))).flatMap(
				(litres) =>
					valueIn(preparationWith(unit, strength, nowhere, nameFigure(say`Make up to`, litres))) ??
					[],
			);
		},
		mixingOn: (day) => mixingTable(unit, day).rows,
		readings: read.tables.strengthReadings.rows.map(({ value }) => value),
	};
}
