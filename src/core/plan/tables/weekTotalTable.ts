import { nameFigure } from "../../calculation.ts";
import type { ComputedTable } from "../../computedTable.ts";
import { type Measure, measures, weekTotalSheet } from "../../sheets/weekTotal.ts";
import type { Pair } from "../measureFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";

const units: Record<Measure, string> = {
	births: "births",
	kits_used: "kits",
	kits_expired: "kits",
	kits_to_reprocess: "kits",
	rounds: "rounds",
	solution_litres: "L",
	chlorine: "",
	boiled_litres: "L",
	boiled_buckets: "buckets",
	vinegar_litres: "L",
	gauze_pieces: "pieces",
};

/** One row a measure, over the whole plan. */
export function weekTotalTable(unit: UnitFigures, period: Record<Measure, Pair>): ComputedTable {
	const { outcome } = unit.productInUse.preparation;
	const productUnit = outcome.ok ? outcome.value.measure : "";
	const rows = measures.map((measure) => ({
		measure_of: nameFigure("Total of", measure),
		expected: period[measure].expected,
		set_aside: period[measure].setAside,
		unit: nameFigure("Unit", measure === "chlorine" ? productUnit : units[measure]),
	}));
	return { sheet: weekTotalSheet, rows };
}
