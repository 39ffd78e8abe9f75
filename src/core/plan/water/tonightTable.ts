import { type Figure, nameFigure } from "../../calculation.ts";
import { upTo } from "../../chlorine/measureOut.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { say } from "../../say.ts";
import { tonightSheet } from "../../sheets/tonight.ts";

/**
 * What is started on one day for a round of the next, earliest first: read off the
 * boiling sheet, so that the two can never disagree.
 */
export function tonightTable(boiling: ComputedTable): ComputedTable {
	return onDemand(tonightSheet, () =>
		boiling.rows.filter(isDayBefore).sort(earliestFirst).map(taskOf),
	);
}

const textOf = (row: ComputedRow, key: string): string => {
	const { outcome } = row[key] as Figure<unknown>;
	return outcome.ok ? String(outcome.value) : "";
};

function isDayBefore(row: ComputedRow): boolean {
	const lightBy = textOf(row, "light_by");
	return lightBy !== "" && lightBy.slice(0, 10) < textOf(row, "date");
}

function earliestFirst(a: ComputedRow, b: ComputedRow): number {
	return textOf(a, "light_by").localeCompare(textOf(b, "light_by"));
}

function taskOf(row: ComputedRow): ComputedRow {
	const [date = "", time = ""] = textOf(row, "light_by").split(" ");
	const litres = Math.ceil(Number(textOf(row, "start_litres")));
	// Up to a tenth: fuel that runs out before the water boils is no use.
	const fuel = Number(upTo(Number(textOf(row, "fuel_quantity")), 0.1).toFixed(1));
	return {
		date: nameFigure(say`Date`, date),
		by: nameFigure(say`By`, time),
		task: nameFigure(
			say`What`,
			say`Light the stove and boil ${litres} L; fuel ${fuel} ${textOf(row, "fuel_measure")}; cover and leave to cool.`,
		),
		for_round: nameFigure(say`For`, `${textOf(row, "round")}, ${textOf(row, "date")}`),
	};
}
