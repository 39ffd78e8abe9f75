import { type Figure, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { valueIn } from "../../outcome.ts";
import { rounded } from "../../rounded.ts";
import { say } from "../../say.ts";
import { boilingSheet } from "../../sheets/boiling.ts";
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
	return {
		date: nameFigure(say`Date`, date),
		by: nameFigure(say`By`, time),
		task: taskFigure(row),
		for_round: nameFigure(say`For`, `${valueIn(row.round)}, ${valueIn(row.date)}`),
	};
}

/** The water and fuel as the boiling sheet shows them. */
function taskFigure({ start_litres, fuel_quantity, fuel_measure }: BoilingRow): Figure<string> {
	const { columns } = boilingSheet;
	const [water, fuel] = [valueIn(start_litres), valueIn(fuel_quantity)];
	if (typeof water !== "number") return start_litres as Figure<never>;
	if (typeof fuel !== "number") return fuel_quantity as Figure<never>;
	const litres = rounded(columns.start_litres, water);
	const quantity = rounded(columns.fuel_quantity, fuel);
	return nameFigure(
		say`What`,
		say`Light the stove and boil ${litres} L; fuel ${quantity} ${valueIn(fuel_measure) ?? ""}; cover and leave to cool.`,
	);
}
