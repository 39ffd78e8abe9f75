import type { Sheet } from "../sheet.ts";
import { boilingSheet } from "./boiling.ts";
import { costsSheet } from "./costs.ts";
import { dayCoverSheet } from "./dayCover.ts";
import { dayPlanSheet } from "./dayPlan.ts";
import { forecastSheet } from "./forecast.ts";
import { howSafeSheet } from "./howSafe.ts";
import { kitCoverSheet } from "./kitCover.ts";
import { kitRegisterSheet } from "./kitRegister.ts";
import { leversSheet } from "./levers.ts";
import { mixingSheet } from "./mixing.ts";
import { mixingDaysSheet } from "./mixingDays.ts";
import { orderSheet } from "./order.ts";
import { productCompareSheet } from "./productCompare.ts";
import { runSheetSheet } from "./runSheet.ts";
import { scorecardSheet } from "./scorecard.ts";
import { stockSheet } from "./stock.ts";
import { stockAheadSheet } from "./stockAhead.ts";
import { strengthSheet } from "./strength.ts";
import { supplyUseSheet } from "./supplyUse.ts";
import { takeFirstSheet } from "./takeFirst.ts";
import { tonightSheet } from "./tonight.ts";
import { wallTableSheet } from "./wallTable.ts";
import { wardUseSheet } from "./wardUse.ts";
import { waterSheet } from "./water.ts";
import { weekPlanSheet } from "./weekPlan.ts";
import { weekTotalSheet } from "./weekTotal.ts";

/** Every sheet that the plan fills in, in the order of the format; problems.csv comes after them. */
export const computedSheets: readonly Sheet[] = [
	dayPlanSheet,
	weekPlanSheet,
	weekTotalSheet,
	howSafeSheet,
	forecastSheet,
	scorecardSheet,
	kitCoverSheet,
	dayCoverSheet,
	leversSheet,
	runSheetSheet,
	kitRegisterSheet,
	mixingSheet,
	mixingDaysSheet,
	wallTableSheet,
	strengthSheet,
	productCompareSheet,
	wardUseSheet,
	boilingSheet,
	tonightSheet,
	waterSheet,
	supplyUseSheet,
	stockSheet,
	orderSheet,
	takeFirstSheet,
	stockAheadSheet,
	costsSheet,
];
