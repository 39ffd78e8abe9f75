import type { State } from "./store.ts";
import { unitSetting } from "./unitSetting.ts";

/** Whether each kit is reprocessed as it has been used, and not in rounds. */
export function reprocessesAfterEachUse(state: State): boolean {
	return unitSetting(state, "reprocessing") === "after_each_use";
}
