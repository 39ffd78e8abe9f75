import { nameFigure } from "../calculation.ts";
import type { ComputedRow, ComputedTable } from "../computedTable.ts";
import { say } from "../say.ts";
import { dayPlanSheet } from "../sheets/dayPlan.ts";
import type { Measure } from "../sheets/weekTotal.ts";
import type { Pair } from "./countFigures.ts";
import type { DayFigures } from "./dayFigures.ts";
import type { CoverFigures } from "./kits/coverFigures.ts";
import type { UnitFigures } from "./unitFigures.ts";

/** One row a day. */
export function dayPlanTable(
	unit: UnitFigures,
	cover: CoverFigures,
	days: readonly { readonly day: DayFigures; readonly measures: Record<Measure, Pair> }[],
): ComputedTable<typeof dayPlanSheet> {
	const rows = days.map(
		({ day, measures: m }): ComputedRow<typeof dayPlanSheet> => ({
			date: nameFigure(say`Date`, day.date),
			births_expected: m.births.expected,
			births_set_aside: m.births.setAside,
			kits_used_expected: m.kits_used.expected,
			kits_expired_expected: m.kits_expired.expected,
			kits_to_reprocess_expected: m.kits_to_reprocess.expected,
			kits_to_reprocess_set_aside: m.kits_to_reprocess.setAside,
			kits_needed: cover.kitsNeeded,
			kits_in_service: unit.kitsInService,
			rounds_expected: m.rounds.expected,
			rounds_set_aside: m.rounds.setAside,
			solution_litres_expected: m.solution_litres.expected,
			solution_litres_set_aside: m.solution_litres.setAside,
			chlorine_product: "row" in unit.productInUse ? unit.productInUse.name : unit.productInUse,
			chlorine_quantity_set_aside: m.chlorine.setAside,
			boiled_litres_expected: m.boiled_litres.expected,
			boiled_litres_set_aside: m.boiled_litres.setAside,
			boiled_buckets_set_aside: m.boiled_buckets.setAside,
			vinegar_litres_expected: m.vinegar_litres.expected,
			vinegar_litres_set_aside: m.vinegar_litres.setAside,
			gauze_pieces_expected: m.gauze_pieces.expected,
			gauze_pieces_set_aside: m.gauze_pieces.setAside,
		}),
	);
	return { sheet: dayPlanSheet, rows };
}
