import type { State } from "../book/store.ts";
import { forecastView } from "../coming/forecastView.ts";
import { kitShareInBrief } from "../coming/kitShareView.ts";
import { scorecardView } from "../coming/scorecardView.ts";
import { kitRegisterView } from "../kits/kitRegisterView.ts";
import { boilingView } from "../mixing/boilingView.ts";
import { compareView } from "../mixing/compareView.ts";
import { mixingDaysView, mixingView } from "../mixing/mixingView.ts";
import { strengthView } from "../mixing/strengthView.ts";
import { wardView } from "../mixing/wardView.ts";
import { waterView } from "../mixing/waterView.ts";
import { runSheetView } from "../rounds/runSheetView.ts";
import { orderView } from "../supplies/orderTable.ts";
import { costsView } from "./costsView.ts";
import { coverView } from "./coverView.ts";
import { dayCoverView } from "./dayCoverView.ts";

/** What stands over a sheet's grid: its picture, with the sentence that says what it shows. */
export type OverGrid = (state: State, room: number) => HTMLElement | undefined;

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
