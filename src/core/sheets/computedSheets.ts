import type { Sheet } from "../sheet.ts";
import { dayPlanSheet } from "./dayPlan.ts";
import { kitCoverSheet } from "./kitCover.ts";
import { mixingSheet } from "./mixing.ts";
import { supplyUseSheet } from "./supplyUse.ts";
import { weekTotalSheet } from "./weekTotal.ts";

/** Every sheet that the plan fills in, in the order of the format; problems.csv comes after them. */
export const computedSheets: readonly Sheet[] = [
	dayPlanSheet,
	weekTotalSheet,
	kitCoverSheet,
	mixingSheet,
	supplyUseSheet,
];
