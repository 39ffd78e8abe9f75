import { settingEntry } from "../../core/edit/begin/settingEntry.ts";
import { byId } from "../dom/el.ts";
import type { State, Store } from "../state/store.ts";
import { unitSetting } from "../state/unitSetting.ts";

const list = () => byId("role") as HTMLSelectElement;

/** Whose questions come first is said beside them, and kept with the workbook as a setting. */
export function setUpRole(store: Store): void {
	list().addEventListener("change", () => {
		const workbook = settingEntry("role").write(store.state.workbook, list().value);
		if (typeof workbook !== "string") store.edit(workbook);
	});
}

export function paintRole(state: State): void {
	list().value = unitSetting(state, "role") ?? "manager";
}
