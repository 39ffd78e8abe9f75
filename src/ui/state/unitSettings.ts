import { readSettings, type Settings } from "../../core/read/readSettings.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import type { State } from "./store.ts";

/** The value of one setting of the unit, or undefined where it has none. */
export function unitSetting<K extends keyof Settings>(state: State, key: K) {
	const { outcome } = readSettings(state.workbook.tables[unitSheet.file]).settings[key];
	return outcome.ok ? outcome.value : undefined;
}
