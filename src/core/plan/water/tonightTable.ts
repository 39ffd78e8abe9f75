import { type Figure, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { valueIn } from "../../outcome.ts";
import { rounded } from "../../rounded.ts";
import { withCellsOnDemand } from "../../rowOnDemand.ts";
import { say } from "../../say.ts";
import { boilingSheet } from "../../sheets/boiling.ts";
import { tonightSheet } from "../../sheets/tonight.ts";
import { inPots } from "../../water/inPots.ts";

/** Of a year's fires a page tells a few. */
const inWords = ["task", "for_round"] as const;

type BoilingRow = ComputedRow<typeof boilingSheet>;

/** Every fire under the day and hour at which it is lit: read off the boiling sheet, so that the two can never disagree. */
export function tonightTable(
	boiling: ComputedTable<typeof boilingSheet>,
): ComputedTable<typeof tonightSheet> {
	return onDemand(tonightSheet, () =>
		boiling.rows.filter(({ light_by }) => light_by.outcome.ok).map(taskOf),
	);
}

function taskOf(row: BoilingRow): ComputedRow<typeof tonightSheet> {
	const [date, time] = (valueIn(row.light_by) as string).split(" ") as [string, string];
	const when = { date: nameFigure(say`Date`, date), by: nameFigure(say`By`, time) };
	return withCellsOnDemand(when, inWords, () => ({
		task: taskFigure(row),
		for_round: nameFigure(say`For`, `${valueIn(row.round)}, ${valueIn(row.date)}`),
	}));
}

/** The water and fuel as the boiling sheet shows them, and under which condition. */
function taskFigure(row: BoilingRow): Figure<string> {
	const { columns } = boilingSheet;
	const { start_litres, fuel_quantity, fuel_measure, pots, only_if } = row;
	// What is lit has its water and its pots; the fuel may be one that nobody can read.
	const fuel = valueIn(fuel_quantity);
	if (typeof fuel !== "number") return fuel_quantity as Figure<never>;
	const litres = rounded(columns.start_litres, valueIn(start_litres) as number);
	const which = valueIn(pots) as string;
	const quantity = say`${rounded(columns.fuel_quantity, fuel)} ${valueIn(fuel_measure)}`;
	const condition = valueIn(only_if);
	const pieces = valueIn(row.pieces);
	const hold = valueIn(row.hold_minutes);
	if (pieces === "boiling")
		return nameFigure(
			say`What`,
			say`If ${condition}: light the stove for a load of pieces, ${litres} L in pot ${which}; ${hold} min from a rolling boil, lid on; fuel ${quantity}.`,
		);
	if (pieces === "steam")
		return nameFigure(
			say`What`,
			say`If ${condition}: light the stove for a load of pieces, ${litres} L under the rack in pot ${which}; ${hold} min from when steam comes, lid on; fuel ${quantity}.`,
		);
	return nameFigure(
		say`What`,
		condition
			? say`If ${condition}: light the stove and boil ${litres} L ${inPots(which)}; fuel ${quantity}; cover and leave to cool.`
			: say`Light the stove and boil ${litres} L ${inPots(which)}; fuel ${quantity}; cover and leave to cool.`,
	);
}
