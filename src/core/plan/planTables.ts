import { litresOfPreparation } from "../chlorine/productFigures.ts";
import type { ComputedTable } from "../computedTable.ts";
import type { IsoDate } from "../values/date.ts";
import { type CoverFigures, coverFigures } from "./coverFigures.ts";
import { type DayFigures, dayFigures } from "./dayFigures.ts";
import { measureFigures } from "./measureFigures.ts";
import { countsOfDay, countsOfPeriod } from "./periodFigures.ts";
import { dayPlanTable } from "./tables/dayPlanTable.ts";
import { kitCoverTable } from "./tables/kitCoverTable.ts";
import { mixingTable } from "./tables/mixingTable.ts";
import { supplyUseTable } from "./tables/supplyUseTable.ts";
import { weekTotalTable } from "./tables/weekTotalTable.ts";
import type { UnitFigures } from "./unitFigures.ts";

export interface PlanTables {
	readonly days: readonly DayFigures[];
	readonly cover: CoverFigures;
	readonly tables: readonly ComputedTable[];
}

/** All computed sheets of a plan for the days given; at least one day. */
export function planTables(unit: UnitFigures, dates: readonly IsoDate[]): PlanTables {
	const litres = litresOfPreparation(unit.read);
	const days = dayFigures(unit, dates);
	const cover = coverFigures(unit, days);
	const counts = countsOfPeriod(unit, days);
	const period = measureFigures(unit, litres, counts);
	const byDay = days.map((day) => ({
		day,
		measures: measureFigures(unit, litres, countsOfDay(unit, day)),
	}));
	const tables = [
		dayPlanTable(unit, cover, byDay),
		weekTotalTable(unit, period),
		kitCoverTable(cover),
		mixingTable(unit, cover, dates[0] as IsoDate),
		supplyUseTable(unit, counts, period),
	];
	return { days, cover, tables };
}
