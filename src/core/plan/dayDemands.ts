import { derive } from "../calculation.ts";
import { kitUses } from "../kits/kitUses.ts";
import { memoizeByObject } from "../memoize.ts";
import type { ReadTable } from "../read/goodRow.ts";
import type { BirthsRow } from "../sheets/births.ts";
import type { IsoDate } from "../values/date.ts";
import { birthsOfDay } from "./births/birthsOfDay.ts";
import type { DayDemand } from "./dayDemand.ts";
import { DemandOfDays, type UsedDay } from "./demandOfDays.ts";
import type { UnitFigures } from "./unitFigures.ts";

/** Births and rounds of days that follow each other. */
export function dayDemands(unit: UnitFigures, dates: readonly IsoDate[]): DayDemand[] {
	return new DemandOfDays(unit, usedDays(unit, dates)).whole;
}

function usedDays(unit: UnitFigures, dates: readonly IsoDate[]): UsedDay[] {
	const { births_per_day } = unit.read.settings;
	return dates.map((date) => {
		const own = ownBirths(unit.read.tables.births)(date);
		const { mean: births, level } = birthsOfDay(date, own, unit.forecast, births_per_day);
		const uses = unit.kinds.map(({ usesPer100Births }) =>
			derive(kitUses, { births, kitsPer100Births: usesPer100Births }),
		);
		return { date, births, level, uses };
	});
}

/** The sheet with the row of one day only: a plan of a year would search all of it for each of its days. */
const ownBirths = memoizeByObject((table: ReadTable<BirthsRow>) => {
	const rows = new Map(table.rows.map((row) => [row.value.date, row]));
	return (date: IsoDate): ReadTable<BirthsRow> => {
		const row = rows.get(date);
		return { ...table, rows: row ? [row] : [] };
	};
});
