import { type Column, computed } from "../column.ts";
import { byColumn } from "./columnKey.ts";
import { amount } from "./computedValues.ts";
import type { MeasureColumn, PlanMeasures } from "./planMeasures.ts";

/** The columns that say what is expected of some measures, and what to set aside. */
export function measureColumns<M extends PlanMeasures>(measures: M) {
	return byColumn(measures, (key, part): Column<number | null> => {
		const { unit, ...measure } = measures[key] as M[string];
		const { label, help, decimals, unit: own = unit } = measure[part] as MeasureColumn;
		const up = part === "setAside" ? ({ rounds: "up" } as const) : {};
		return computed({ label, unit: own, value: amount(), decimals, ...up, help });
	});
}
