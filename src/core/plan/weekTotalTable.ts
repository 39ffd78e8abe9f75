import { nameFigure } from "../calculation.ts";
import type { ComputedTable } from "../computedTable.ts";
import { say } from "../say.ts";
import { type Measure, measures, weekTotalSheet } from "../sheets/weekTotal.ts";
import type { Pair } from "./countFigures.ts";
import type { DayFigures } from "./dayFigures.ts";

const units: Record<Measure, string> = {
	births: say`births`,
	kits_used: say`kits`,
	kits_expired: say`kits`,
	kits_to_reprocess: say`kits`,
	rounds: say`rounds`,
	solution_litres: "L",
	chlorine: "",
	boiled_litres: "L",
	boiled_buckets: say`buckets`,
	vinegar_litres: "L",
	gauze_pieces: say`pieces`,
};

/** One row a measure, over the whole plan. */
export function weekTotalTable(
	days: readonly DayFigures[],
	period: Record<Measure, Pair>,
): ComputedTable<typeof weekTotalSheet> {
	const { outcome } = (days[0] as DayFigures).preparation;
	const productUnit = outcome.ok ? outcome.value.measure : "";
	const rows = measures.map((measure) => ({
		measure_of: nameFigure(say`Total of`, measure),
		expected: period[measure].expected,
		set_aside: period[measure].setAside,
		unit: nameFigure(say`Unit`, measure === "chlorine" ? productUnit : units[measure]),
	}));
	return { sheet: weekTotalSheet, rows };
}
