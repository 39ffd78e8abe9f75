import { type SettingKey, settings } from "../../sheets/settings.ts";
import type { BeginEntry } from "../begin/beginEntry.ts";
import { roundsEntry } from "../begin/roundsEntry.ts";
import { settingEntry } from "../begin/settingEntry.ts";
import { periodSettings } from "../periodSettings.ts";
import { birthsEveryDayEntry } from "./birthsEveryDayEntry.ts";
import { kitsTriedEntry } from "./kitsTriedEntry.ts";
import { methodTriedEntry } from "./methodTriedEntry.ts";

/** What most often makes a difference, in the order in which people ask. */
export const usualEntries: readonly BeginEntry[] = [
	birthsEveryDayEntry,
	kitsTriedEntry,
	roundsEntry,
	methodTriedEntry,
	settingEntry("workers_per_round"),
	settingEntry("delivery_beds"),
];

/** Every other setting, but the days planned. */
export const furtherEntries: readonly BeginEntry[] = (Object.keys(settings) as SettingKey[])
	.filter((key) => !periodSettings.includes(key) && !usualEntries.some((each) => each.key === key))
	.map(settingEntry);

export const trialEntries: readonly BeginEntry[] = [...usualEntries, ...furtherEntries];
