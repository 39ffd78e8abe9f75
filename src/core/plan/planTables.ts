import type { AnyTable } from "../computedTable.ts";
import type { InSteps } from "../inSteps.ts";
import { onceAsked } from "../onceAsked.ts";
import { withCellsOnDemand } from "../rowOnDemand.ts";
import type { IsoDate } from "../values/date.ts";
import { forecastTable } from "./births/forecastTable.ts";
import { scorecardTable } from "./births/scorecardTable.ts";
import { litresOfPreparation } from "./chlorine/litresOfPreparation.ts";
import { mixingDaysTable } from "./chlorine/mixingDaysTable.ts";
import { mixingTable } from "./chlorine/mixingTable.ts";
import { productCompareTable } from "./chlorine/productCompareTable.ts";
import { strengthTable } from "./chlorine/strengthTable.ts";
import { wallTableTable } from "./chlorine/wallTableTable.ts";
import { wardUses } from "./chlorine/wardUses.ts";
import { wardUseTable } from "./chlorine/wardUseTable.ts";
import { countsOfDay, countsOfPeriod } from "./countsOfPeriod.ts";
import type { DayDemand } from "./dayDemand.ts";
import { type DayFigures, withCounts } from "./dayFigures.ts";
import { dayPlanTable } from "./dayPlanTable.ts";
import { firstLike } from "./firstLike.ts";
import { type CoverFigures, coverFigures } from "./kits/coverFigures.ts";
import { dayCoverTable } from "./kits/dayCoverTable.ts";
import { kitCoverTable } from "./kits/kitCoverTable.ts";
import { kitRegisterTable } from "./kits/kitRegisterTable.ts";
import { leversTable } from "./kits/leversTable.ts";
import { litresBoiled, measureFigures } from "./measureFigures.ts";
import { type RoundPlan, roundPlans } from "./rounds/roundPlans.ts";
import { runSheetTable } from "./rounds/runSheetTable.ts";
import { howSafeTable } from "./safety/howSafeTable.ts";
import { costsTable } from "./store/costsTable.ts";
import { orderTable } from "./store/orderTable.ts";
import { stockAheadTable } from "./store/stockAheadTable.ts";
import { stockTable } from "./store/stockTable.ts";
import { storeFigures } from "./store/storeFigures.ts";
import { supplyUseTable } from "./store/supplyUseTable.ts";
import { takeFirstTable } from "./store/takeFirstTable.ts";
import type { UnitFigures } from "./unitFigures.ts";
import { boiledLoads } from "./water/boiledLoads.ts";
import { boilingTable } from "./water/boilingTable.ts";
import { type FiresOfPlan, firesOfPlan } from "./water/firesOfPlan.ts";
import { tonightTable } from "./water/tonightTable.ts";
import { waterTable } from "./water/waterTable.ts";
import { weekPlanTable } from "./weekPlanTable.ts";
import { weekTotalTable } from "./weekTotalTable.ts";

export interface PlanTables {
	readonly days: readonly DayFigures[];
	readonly cover: CoverFigures;
	readonly rounds: readonly RoundPlan[];
	readonly fires: InSteps<FiresOfPlan>;
	/** The plan is made when every cell of these has an answer, */
	readonly needed: readonly AnyTable[];
	/** and of this. */
	readonly dayPlan: AnyTable;
	/** For each day the first like it: every cell of the one has an answer where every cell of the other has. */
	readonly likeDay: (day: number) => number;
	/** What a product that is not in use would make is for comparing; the plan does not wait for it. */
	readonly compared: readonly AnyTable[];
	/** Views of the same figures, worked out when looked at. */
	readonly views: readonly AnyTable[];
}

/** What is set aside for one day: of a year a page shows a week. */
const ofOneDay = ["loads", "ofMethods", "preparations", "taken", "measures"] as const;

/** All computed sheets of a plan for the days given; at least one day. */
export function planTables(unit: UnitFigures, demands: readonly DayDemand[]): PlanTables {
	const litres = litresOfPreparation(unit.read);
	const days = withCounts(unit, demands);
	const dates = days.map(({ date }) => date);
	const cover = coverFigures(unit, days);
	const counts = countsOfPeriod(unit, days);
	const boiled = boiledLoads(unit, days);
	const period = measureFigures(unit, litres, counts, boiled.inPeriod(counts));
	const byDay = days.map((day, d) =>
		withCellsOnDemand({ day }, ofOneDay, () => {
			const ofDay = countsOfDay(unit, day);
			const loads = boiled.onDay(d, ofDay);
			const { loads: ofMethods, preparations } = ofDay;
			const taken = litresBoiled(unit, ofDay, ofMethods.chlorine ?? loads);
			const measures = measureFigures(unit, litres, ofDay, loads);
			return { loads, ofMethods, preparations, taken, measures };
		}),
	);
	const firstDay = dates[0] as IsoDate;
	const store = storeFigures(unit, firstDay);
	const rounds = onceAsked(() => roundPlans(unit, days));
	const ward = wardUses(unit, dates);
	const fires = firesOfPlan(unit, rounds);
	const boiling = boilingTable(unit, fires);
	return {
		days,
		cover,
		get rounds() {
			return rounds();
		},
		fires,
		dayPlan: dayPlanTable(unit, cover, byDay),
		// What stands ready is no matter of a day's own rounds.
		likeDay: boiled.goesByRounds ? firstLike(days) : (day) => day,
		needed: [weekTotalTable(days, period), supplyUseTable(unit, days, counts.rounds, period, ward)],
		compared: [mixingTable(unit, firstDay)],
		views: [
			howSafeTable(unit, cover, period, byDay, store.items, fires),
			weekPlanTable(unit, litres, days),
			forecastTable(unit, days),
			scorecardTable(unit.register),
			kitCoverTable(cover),
			dayCoverTable(cover, days),
			leversTable(unit, days, cover),
			runSheetTable(unit, rounds),
			kitRegisterTable(unit),
			mixingDaysTable(unit, days),
			wallTableTable(unit, firstDay),
			strengthTable(unit, firstDay),
			productCompareTable(unit, period.solution_litres),
			wardUseTable(ward),
			boiling,
			tonightTable(boiling),
			waterTable(unit, byDay, boiled.isBeforehand),
			stockTable(unit, store.items, firstDay),
			orderTable(unit, store, firstDay),
			takeFirstTable(store.budget, firstDay),
			stockAheadTable(store.items, store.ahead, firstDay),
			costsTable(unit, days),
		],
	};
}
