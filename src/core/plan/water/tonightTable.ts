import { nameFigure } from "../../calculation.ts";
import { upTo } from "../../chlorine/measureOut.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import type { boilingSheet } from "../../sheets/boiling.ts";
import { tonightSheet } from "../../sheets/tonight.ts";

type BoilingRow = ComputedRow<typeof boilingSheet>;

/**
 * What is started on one day for a round of the next, earliest first: read off the
 * boiling sheet, so that the two can never disagree.
 */
export function tonightTable(
	boiling: ComputedTable<typeof boilingSheet>,
): ComputedTable<typeof tonightSheet> {
	return onDemand(tonightSheet, () =>
		boiling.rows.filter(isDayBefore).sort(earliestFirst).map(taskOf),
	);
}

function isDayBefore({ light_by, date }: BoilingRow): boolean {
	const lightBy = valueIn(light_by);
	return lightBy !== undefined && lightBy.slice(0, 10) < (valueIn(date) ?? "");
}

function earliestFirst(a: BoilingRow, b: BoilingRow): number {
	return (valueIn(a.light_by) ?? "").localeCompare(valueIn(b.light_by) ?? "");
}

function taskOf(row: BoilingRow): ComputedRow<typeof tonightSheet> {
	const [date = "", time = ""] = (valueIn(row.light_by) ?? "").split(" ");
	const litres = Math.ceil(valueIn(row.start_litres) ?? 0);
	// Up to a tenth: fuel that runs out before the water boils is no use.
	const fuel = Number(upTo(valueIn(row.fuel_quantity) ?? 0, 0.1).toFixed(1));
	return {
		date: nameFigure(say`Date`, date),
		by: nameFigure(say`By`, time),
		task: nameFigure(
			say`What`,
			say`Light the stove and boil ${litres} L; fuel ${fuel} ${valueIn(row.fuel_measure) ?? ""}; cover and leave to cool.`,
		),
		for_round: nameFigure(say`For`, `${valueIn(row.round)}, ${valueIn(row.date)}`),
	};
}
