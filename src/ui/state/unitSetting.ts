import { readSettings, type Settings } from "../../core/read/readSettings.ts";
import { say } from "../../core/say.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import { waitsFor } from "../format/waitsFor.ts";
import type { State } from "./store.ts";

/** One setting of the unit: its value, or the problems because of which it has none. */
export function settingOutcome<K extends keyof Settings>(
	state: State,
	key: K,
): Settings[K]["outcome"] {
	return readSettings(state.workbook.tables[unitSheet.file]).settings[key].outcome;
}

/** The value of one setting of the unit, or undefined where it has none. */
export function unitSetting<K extends keyof Settings>(state: State, key: K) {
	const outcome = settingOutcome(state, key);
	return outcome.ok ? outcome.value : undefined;
}

/** A setting as it is printed: its value; or none, and why it is left to be written by hand. */
export interface Printed<T> {
	readonly value: T | undefined;
	/** "" where there is a value. */
	readonly why: string;
}

/** One setting of the unit for a label, a sheet or a page. Nothing stands in for one that cannot be read. */
export function printedSetting<K extends keyof Settings>(state: State, key: K) {
	const outcome = settingOutcome(state, key);
	return outcome.ok
		? { value: outcome.value, why: "" }
		: { value: undefined, why: say`Write it by hand: ${waitsFor(outcome)}` };
}
