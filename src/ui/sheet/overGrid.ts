import type { OverGrid } from "../page.ts";
import { forecastView } from "../subjects/births/forecastView.ts";
import { kitShareInBrief } from "../subjects/births/kitShareView.ts";
import { scorecardView } from "../subjects/births/scorecardView.ts";
import { coverView } from "../subjects/kits/coverView.ts";
import { dayCoverView } from "../subjects/kits/dayCoverView.ts";
import { kitRegisterView } from "../subjects/kits/kitRegisterView.ts";
import { compareView } from "../subjects/mixing/compareView.ts";
import { mixingDaysView, mixingView } from "../subjects/mixing/mixingView.ts";
import { strengthView } from "../subjects/mixing/strengthView.ts";
import { wardView } from "../subjects/mixing/wardView.ts";
import { costsView } from "../subjects/order/costsView.ts";
import { orderView } from "../subjects/order/orderTable.ts";
import { runSheetView } from "../subjects/rounds/runSheetView.ts";
import { boilingView } from "../subjects/water/boilingView.ts";
import { waterView } from "../subjects/water/waterView.ts";

/** By file; a sheet without an entry has only its grid. */
export const overGrid: Readonly<Record<string, OverGrid>> = {
	"kit-cover.csv": coverView,
	"forecast.csv": forecastView,
	"records.csv": kitShareInBrief,
	"scorecard.csv": scorecardView,
	"costs.csv": costsView,
	"order.csv": orderView,
	"day-cover.csv": dayCoverView,
	"run-sheet.csv": runSheetView,
	"kit-register.csv": kitRegisterView,
	"mixing.csv": mixingView,
	"mixing-days.csv": mixingDaysView,
	"strength.csv": strengthView,
	"product-compare.csv": compareView,
	"boiling.csv": boilingView,
	"water.csv": waterView,
	"ward-use.csv": wardView,
	"ward-solution.csv": wardView,
};
