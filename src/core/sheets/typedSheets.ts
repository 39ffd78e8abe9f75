import type { Sheet } from "../sheet.ts";
import { birthsSheet } from "./births.ts";
import { checksSheet } from "./checks.ts";
import { chlorineSheet } from "./chlorine.ts";
import { hoursSheet } from "./hours.ts";
import { itemsSheet } from "./items.ts";
import { journalSheet } from "./journal.ts";
import { keptSettingsSheet } from "./keptSettings.ts";
import { kindsSheet } from "./kinds.ts";
import { kindUseSheet } from "./kindUse.ts";
import { kitsSheet } from "./kits.ts";
import { lotsSheet } from "./lots.ts";
import { pastPlansSheet } from "./pastPlans.ts";
import { placedSheet } from "./placed.ts";
import { recordsSheet } from "./records.ts";
import { roundsSheet } from "./rounds.ts";
import { roundsDoneSheet } from "./roundsDone.ts";
import { stepsSheet } from "./steps.ts";
import { strengthReadingsSheet } from "./strengthReadings.ts";
import { treatmentsSheet } from "./treatments.ts";
import { unitSheet } from "./unit.ts";
import { usageSheet } from "./usage.ts";
import { usesSheet } from "./uses.ts";
import { wardSolutionSheet } from "./wardSolution.ts";
import { waterSourcesSheet } from "./waterSources.ts";

/**
 * Every sheet that people fill in, under its name in a workbook that is read, in the order of the format.
 *
 * The reading follows from this list: what stands here is read, and nothing else.
 */
export const sheetsByName = {
	unit: unitSheet,
	births: birthsSheet,
	hours: hoursSheet,
	rounds: roundsSheet,
	steps: stepsSheet,
	kinds: kindsSheet,
	treatments: treatmentsSheet,
	kindUse: kindUseSheet,
	kits: kitsSheet,
	usage: usageSheet,
	items: itemsSheet,
	chlorine: chlorineSheet,
	lots: lotsSheet,
	journal: journalSheet,
	strengthReadings: strengthReadingsSheet,
	wardSolution: wardSolutionSheet,
	waterSources: waterSourcesSheet,
	records: recordsSheet,
	uses: usesSheet,
	roundsDone: roundsDoneSheet,
	checks: checksSheet,
	placed: placedSheet,
	pastPlans: pastPlansSheet,
	keptSettings: keptSettingsSheet,
} satisfies Readonly<Record<string, Sheet>>;

/** The same as a list. */
export const typedSheets: readonly Sheet[] = Object.values(sheetsByName);
