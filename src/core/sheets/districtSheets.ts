import type { Sheet } from "../sheet.ts";
import { districtNamesSheet } from "./districtNames.ts";
import { districtStockSheet } from "./districtStock.ts";
import { unitsSheet } from "./units.ts";
import { unitsMonthSheet } from "./unitsMonth.ts";
import { unitsNeedsSheet } from "./unitsNeeds.ts";
import { unitsOrderSheet } from "./unitsOrder.ts";
import { unitsProblemsSheet } from "./unitsProblems.ts";
import { unitsTrendSheet } from "./unitsTrend.ts";

/** What is made of a district's units, in the order in which it is described. */
export const districtSheets: readonly Sheet[] = [
	unitsSheet,
	unitsNeedsSheet,
	unitsOrderSheet,
	unitsProblemsSheet,
	unitsTrendSheet,
	unitsMonthSheet,
];

/** What a district may say of itself beside its units' workbooks. */
export const districtTypedSheets = { names: districtNamesSheet, stock: districtStockSheet };
