import { say } from "../../core/say.ts";
import { demoWorkbook } from "../book/demo.ts";
import { emptyWorkbook } from "../book/emptyWorkbook.ts";
import type { State, Store } from "../book/store.ts";
import { byId } from "../dom/el.ts";
import { askForFiles, type Opened } from "../files/openFiles.ts";
import { saveWorkbook } from "../files/saveWorkbook.ts";
import { unitSetting } from "../views/unitSettings.ts";

/** Puts the buttons of the page's head to work. */
export function setUpTopBar(store: Store, opened: (opened: Opened) => void): void {
	const on = (id: string, act: () => void) => byId(id).addEventListener("click", act);
	on("undo", () => store.undo());
	on("redo", () => store.redo());
	on("open-files", () => askForFiles(opened));
	on("start-demo", () => store.open(demoWorkbook()));
	on("start-empty", () => store.open(emptyWorkbook()));
	on("save-workbook", () => {
		const { workbook, plan } = store.state;
		saveWorkbook(workbook, plan, fileName(store.state));
		store.markSaved();
	});
}

/** Shows the unit's name, what can be undone, and whether everything is kept. */
export function paintTopBar(state: State, draftTrouble: string | undefined): void {
	byId("unit-name").textContent = unitSetting(state, "unit_name") ?? "";
	(byId("undo") as HTMLButtonElement).disabled = !state.canUndo;
	(byId("redo") as HTMLButtonElement).disabled = !state.canRedo;
	const kept = byId("kept");
	kept.classList.toggle("trouble", draftTrouble !== undefined);
	kept.textContent =
		draftTrouble ?? (state.unsaved ? say`Draft kept here; not yet saved to a file` : "");
}

function fileName(state: State): string {
	const words = `${unitSetting(state, "unit_name") ?? "workbook"} ${unitSetting(state, "plan_start") ?? ""}`;
	return (
		words
			.replace(/[^\p{L}\p{N}]+/gu, "-")
			.replace(/^-|-$/g, "")
			.slice(0, 60) || "workbook"
	);
}
