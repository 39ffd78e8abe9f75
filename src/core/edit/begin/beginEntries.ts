import type { BeginEntry } from "./beginEntry.ts";
import { everyBirthEntry } from "./everyBirthEntry.ts";
import { inStoreEntry } from "./inStoreEntry.ts";
import { kindEntry } from "./kindEntry.ts";
import { kitsEntry } from "./kitsEntry.ts";
import { roundsEntry } from "./roundsEntry.ts";
import { settingEntry } from "./settingEntry.ts";
import { stepsEntry } from "./stepsEntry.ts";
import { strengthEntry } from "./strengthEntry.ts";

/** What stands filled in already, to be changed where it is different. */
export const filledEntries: readonly BeginEntry[] = [everyBirthEntry];

/** The method, chosen beside the steps that are proposed for it: no entry of its own. */
export const methodEntry = settingEntry("method");

/** The ten things at most that a first plan needs, in the order in which a unit knows them. */
export const beginEntries: readonly BeginEntry[] = [
	settingEntry("plan_start"),
	settingEntry("births_per_day"),
	settingEntry("delivery_beds"),
	kitsEntry,
	roundsEntry,
	stepsEntry,
	settingEntry("pots"),
	kindEntry,
	strengthEntry,
	inStoreEntry,
];
