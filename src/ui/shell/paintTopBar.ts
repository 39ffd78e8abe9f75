import { emptyWorkbook } from "../../core/edit/emptyWorkbook.ts";
import { say } from "../../core/say.ts";
import type { Workbook } from "../../core/workbook.ts";
import { byId } from "../dom/el.ts";
import { askForFiles } from "../files/askForFiles.ts";
import { canWriteFiles } from "../files/askWhereToSave.ts";
import type { Opened } from "../files/readGiven.ts";
import { saveWorkbook } from "../files/saveWorkbook.ts";
import { demoWorkbook } from "../state/demoWorkbook.ts";
import type { State, Store } from "../state/store.ts";
import { unitSetting } from "../state/unitSetting.ts";
import { setUpSaveKeys } from "./setUpSaveKeys.ts";

const LONGEST_NAME = 30;

/** Puts the buttons of the page's head to work. */
export function setUpTopBar(
	store: Store,
	opened: (opened: Opened) => void,
	{
		start,
		moveOn,
		earlierDrafts,
	}: Record<"moveOn" | "earlierDrafts", () => void> & {
		start(workbook: Workbook): void;
	},
): void {
	const on = (id: string, act: () => void) => byId(id).addEventListener("click", act);
	on("undo", () => store.undo());
	on("redo", () => store.redo());
	on("open-files", () => askForFiles(opened));
	const begin = (id: string, act: () => void) =>
		on(id, () => {
			byId(id).closest("details")?.removeAttribute("open");
			act();
		});
	begin("start-demo", () => start(demoWorkbook()));
	begin("start-empty", () => start(emptyWorkbook()));
	begin("move-on", moveOn);
	begin("earlier-drafts", earlierDrafts);
	on("save-workbook", () => saveWorkbook(store));
	on("save-as", () => saveWorkbook(store, true));
	byId("save-as").hidden = !canWriteFiles();
	setUpSaveKeys((asAnother) => saveWorkbook(store, asAnother));
}

/** Shows the unit's name, what can be undone, and whether everything is kept. */
export function paintTopBar(state: State, draftTrouble: string | undefined): void {
	byId("unit-name").textContent = unitSetting(state, "unit_name") ?? "";
	(byId("undo") as HTMLButtonElement).disabled = !state.canUndo;
	(byId("redo") as HTMLButtonElement).disabled = !state.canRedo;
	const kept = byId("kept");
	kept.classList.toggle("trouble", draftTrouble !== undefined);
	const name = state.book.in.file?.handle.name ?? state.book.in.download ?? "";
	kept.textContent = draftTrouble ?? savedWords(state, short(name));
	kept.title = name;
}

function savedWords({ unsaved, book: { in: saved } }: State, name: string): string {
	if (saved.file)
		return unsaved ? say`Draft kept here; not yet saved in ${name}` : say`Saved in ${name}`;
	if (unsaved) return say`Draft kept here; not yet saved to a file`;
	return saved.download ? say`Downloaded as ${name}` : "";
}

/** Beginning and end of a long name: the unit's name stands beside it, and the day is at the end. */
function short(name: string): string {
	const letters = [...name];
	if (letters.length <= LONGEST_NAME) return name;
	return `${letters.slice(0, 12).join("")}…${letters.slice(12 - LONGEST_NAME).join("")}`;
}
