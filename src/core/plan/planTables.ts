import { litresOfPreparation } from "../chlorine/productFigures.ts";
import type { ComputedTable } from "../computedTable.ts";
import type { IsoDate } from "../values/date.ts";
import { type CoverFigures, coverFigures } from "./coverFigures.ts";
import { type DayFigures, dayFigures } from "./dayFigures.ts";
import { measureFigures } from "./measureFigures.ts";
import { countsOfDay, countsOfPeriod } from "./periodFigures.ts";
import { type RoundPlan, roundPlans } from "./roundPlans.ts";
import { storeFigures } from "./storeFigures.ts";
import { boilingTable } from "./tables/boilingTable.ts";
import { costsTable } from "./tables/costsTable.ts";
import { dayCoverTable } from "./tables/dayCoverTable.ts";
import { dayPlanTable } from "./tables/dayPlanTable.ts";
import { forecastTable } from "./tables/forecastTable.ts";
import { kitCoverTable } from "./tables/kitCoverTable.ts";
import { kitRegisterTable } from "./tables/kitRegisterTable.ts";
import { leversTable } from "./tables/leversTable.ts";
import { mixingDaysTable } from "./tables/mixingDaysTable.ts";
import { mixingTable } from "./tables/mixingTable.ts";
import { orderTable } from "./tables/orderTable.ts";
import { productCompareTable } from "./tables/productCompareTable.ts";
import { runSheetTable } from "./tables/runSheetTable.ts";
import { scorecardTable } from "./tables/scorecardTable.ts";
import { stockAheadTable } from "./tables/stockAheadTable.ts";
import { stockTable } from "./tables/stockTable.ts";
import { strengthTable } from "./tables/strengthTable.ts";
import { supplyUseTable } from "./tables/supplyUseTable.ts";
import { tonightTable } from "./tables/tonightTable.ts";
import { wallTableTable } from "./tables/wallTableTable.ts";
import { wardUseTable } from "./tables/wardUseTable.ts";
import { waterTable } from "./tables/waterTable.ts";
import { weekTotalTable } from "./tables/weekTotalTable.ts";
import type { UnitFigures } from "./unitFigures.ts";
import { wardUses } from "./wardFigures.ts";

export interface PlanTables {
	readonly days: readonly DayFigures[];
	readonly cover: CoverFigures;
	readonly rounds: readonly RoundPlan[];
	/** The plan is made when every cell of these has an answer. */
	readonly needed: readonly ComputedTable[];
	/** What a product that is not in use would make is for comparing; the plan does not wait for it. */
	readonly compared: readonly ComputedTable[];
	/** Views of the same figures, worked out when looked at. */
	readonly views: readonly ComputedTable[];
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
	const firstDay = dates[0] as IsoDate;
	const store = storeFigures(unit, firstDay);
	const rounds = roundPlans(unit, days);
	const ward = wardUses(unit, dates);
	const boiling = boilingTable(unit, rounds);
	return {
		days,
		cover,
		rounds,
		needed: [
			dayPlanTable(unit, cover, byDay),
			weekTotalTable(days, period),
			kitCoverTable(cover),
			supplyUseTable(unit, days, counts, period, ward),
		],
		compared: [mixingTable(unit, cover, firstDay)],
		views: [
			forecastTable(days),
			scorecardTable(unit.register),
			dayCoverTable(cover, days),
			leversTable(unit, dates),
			runSheetTable(unit, rounds),
			kitRegisterTable(unit),
			mixingDaysTable(unit, days),
			wallTableTable(unit, firstDay),
			strengthTable(unit, firstDay),
			productCompareTable(unit, period.solution_litres),
			wardUseTable(ward),
			boiling,
			tonightTable(boiling),
			waterTable(unit, days),
			stockTable(unit, store.items, firstDay),
			orderTable(unit, store.items, firstDay),
			stockAheadTable(store.items, store.ahead, firstDay),
			costsTable(unit, dates),
		],
	};
}
