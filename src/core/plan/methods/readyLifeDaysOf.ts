import type { Figure } from "../../calculation.ts";
import type { MethodsOfKits } from "../../methods/methodsOfKits.ts";
import type { Settings } from "../../read/readSettings.ts";

/** Whether no piece of these kits is less than sterile: each is autoclaved or new. */
export function isSterile({ methods }: MethodsOfKits): boolean {
	return methods.every((method) => method === "autoclave" || method === "single_use");
}

/** Whether some piece of these kits is sent to an autoclave. */
export function isSentAway({ methods }: MethodsOfKits): boolean {
	return methods.includes("autoclave");
}

/** Days that ready kits may be used: their sterile life where every piece has one; else as what is disinfected. */
export function readyLifeDaysOf(settings: Settings, treated: MethodsOfKits | undefined): Figure {
	return treated && isSentAway(treated) && isSterile(treated)
		? settings.sterile_life_days
		: settings.ready_life_days;
}
