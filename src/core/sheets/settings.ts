import { planSettings } from "../births/settings.ts";
import { chlorineSettings } from "../chlorine/settings.ts";
import { kitSettings } from "../kits/settings.ts";
import { methodSettings } from "../methods/settings.ts";
import { recordSettings } from "../record/settings.ts";
import { roundSettings } from "../rounds/settings.ts";
import { say } from "../say.ts";
import { stockSettings } from "../stock/settings.ts";
import { vinegarSettings } from "../vinegar/settings.ts";
import { waterSettings } from "../water/settings.ts";

/** Every key of unit.csv with its meaning, limits and default, by subject. */
export const settings = {
	...planSettings,
	...kitSettings,
	...roundSettings,
	...methodSettings,
	...chlorineSettings,
	...waterSettings,
	...vinegarSettings,
	...stockSettings,
	...recordSettings,
};

/** A subject's settings under its name. */
export interface SettingGroup {
	readonly title: string;
	readonly keys: readonly string[];
}

/** The settings by subject, in their order. */
export const settingGroups: readonly SettingGroup[] = [
	[say`The unit and its births`, planSettings] as const,
	[say`Kits`, kitSettings] as const,
	[say`Rounds`, roundSettings] as const,
	[say`How pieces are treated`, methodSettings] as const,
	[say`Chlorine`, chlorineSettings] as const,
	[say`Boiled water`, waterSettings] as const,
	[say`Vinegar`, vinegarSettings] as const,
	[say`The store`, stockSettings] as const,
	[say`The record`, recordSettings] as const,
].map(([title, of]) => ({ title, keys: Object.keys(of) }));

export type SettingKey = keyof typeof settings;
