import type { PageTitle } from "../page.ts";
import type { State } from "../state/store.ts";
import { unitSetting } from "../state/unitSetting.ts";

/**
 * What the window, its tab and a file printed from it are called: the page and the unit.
 * @example "Work sheet – Maternity of Basin"
 */
export function documentTitle({ title }: PageTitle, state: State): string {
	return [title, unitSetting(state, "unit_name") || "Basinbook"].join(" – ");
}
