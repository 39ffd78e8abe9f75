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
import { recordsSheet } from "./records.ts";
import { roundsSheet } from "./rounds.ts";
import { stepsSheet } from "./steps.ts";
import { strengthReadingsSheet } from "./strengthReadings.ts";
import { unitSheet } from "./unit.ts";
import { usageSheet } from "./usage.ts";
import { wardSolutionSheet } from "./wardSolution.ts";
import { waterSourcesSheet } from "./waterSources.ts";

/** Every sheet that people fill in, in the order of the format. */
export const typedSheets: readonly Sheet[] = [
	unitSheet,
	birthsSheet,
	hoursSheet,
	roundsSheet,
	stepsSheet,
	kindsSheet,
	kindUseSheet,
	kitsSheet,
	usageSheet,
	itemsSheet,
	chlorineSheet,
	lotsSheet,
	journalSheet,
	strengthReadingsSheet,
	wardSolutionSheet,
	waterSourcesSheet,
	recordsSheet,
	checksSheet,
	keptSettingsSheet,
];
