import { planSettings } from "../births/settings.ts";
import { chlorineSettings } from "../chlorine/settings.ts";
import { kitSettings } from "../kits/settings.ts";
import { methodSettings } from "../methods/settings.ts";
import { recordSettings } from "../record/settings.ts";
import { roundSettings } from "../rounds/settings.ts";
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

export type SettingKey = keyof typeof settings;
