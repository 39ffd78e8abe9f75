import { isEmpty } from "../core/edit/emptyWorkbook.ts";
import type { Place } from "../core/problem.ts";
import { say } from "../core/say.ts";
import type { Workbook } from "../core/workbook.ts";
import { byId, el, fill } from "./dom/el.ts";
import { bringWhenIdle } from "./dom/later.ts";
import { openedWorkbook } from "./files/openedWorkbook.ts";
import { type Opened, takeDroppedFiles } from "./files/openFiles.ts";
import { FindDialog } from "./find/findDialog.ts";
import type { View } from "./page.ts";
import { printedFoot, printedHead } from "./print/printedPage.ts";
import { ownPages } from "./sheet/ownPages.ts";
import { problemList } from "./sheet/problemList.ts";
import { SheetView } from "./sheet/sheetView.ts";
import { setUpKeys } from "./shell/keys.ts";
import { KeysDialog } from "./shell/keysDialog.ts";
import { keepSheetInLanguageLinks } from "./shell/languageLinks.ts";
import { offerDraft, showEarlierDrafts } from "./shell/opening.ts";
import { BEGIN, THIS_WEEK } from "./shell/pageTitles.ts";
import { paintRail, setUpMenu, unfold } from "./shell/rail.ts";
import { hashOf, routedSheet } from "./shell/route.ts";
import { paintTopBar, setUpTopBar } from "./shell/topBar.ts";
import { demoWorkbook } from "./state/demo.ts";
import { hurryDraft, keepDraft } from "./state/draft.ts";
import { type Saved, Store } from "./state/store.ts";
import { moveOnDialog } from "./subjects/begin/moveOnDialog.ts";
// Last, so that it stands over the grid library's own sheet.
import "./style/workbook.css";

const store = new Store(demoWorkbook());
let draftTrouble: string | undefined;
let view: View | undefined;

function tell(messages: readonly string[]): void {
	fill(byId("told"), ...messages.map((words) => el("p", {}, words)));
}

function goTo(place: Place): void {
	const hash = hashOf(place.file);
	if (location.hash !== hash) history.pushState(null, "", hash);
	openSheet();
	view?.show(place);
}

function openSheet(): void {
	const file = routedSheet(location.hash);
	if (view?.file !== file) {
		view?.destroy();
		const around = { store, goTo, tell };
		view =
			ownPages[file]?.mount(byId("sheet"), around) ?? new SheetView(file, byId("sheet"), around);
		tell([]);
		unfold(byId("rail"), file);
		window.scrollTo(0, 0);
	}
	keepSheetInLanguageLinks();
	paintShell();
}

function paintShell(): void {
	const { state } = store;
	paintRail(byId("rail"), state, view?.file ?? "");
	paintTopBar(state, draftTrouble);
	fill(byId("printed-head"), ...printedHead(state));
	fill(byId("printed-foot"), ...printedFoot());
	fill(
		byId("trouble"),
		state.programError &&
			el(
				"p",
				{ class: "reason" },
				say`Program error: ${state.programError}. Your text is safe; undo, or save the workbook to a file.`,
			),
		state.reading.length > 0 && problemList(state.reading, goTo, say`Found while opening`),
	);
}

function opened({ workbook, problems, file }: Opened): void {
	const { workbook: next, isAnother, told } = openedWorkbook(store.state.workbook, workbook);
	if (isAnother) store.open(next, problems, { saved: next, ...(file && { file }) });
	else store.edit(next, problems);
	goToBeginning(next);
	tell([told]);
}

/** Another workbook from its beginning. */
function start(workbook: Workbook, saved?: Saved): void {
	store.open(workbook, [], saved);
	goToBeginning(workbook);
}

/** An empty workbook is begun on a page of its own; any other one leaves that page for its plan. */
function goToBeginning(workbook: Workbook): void {
	const file = isEmpty(workbook) ? BEGIN : view?.file === BEGIN ? THIS_WEEK : undefined;
	if (file) goTo({ file, line: null, column: "" });
}

store.subscribe((state) => {
	void keepDraft(state.workbook, (trouble) => {
		if (trouble === draftTrouble) return;
		draftTrouble = trouble;
		paintShell();
	});
	view?.paint(state);
	paintShell();
});
window.addEventListener("pagehide", hurryDraft);
const ways = { start, goOn: (draft: Workbook) => start(draft, {}), tell };
const find = new FindDialog(() => store.state, goTo);
const keys = new KeysDialog();
byId("find").addEventListener("click", () => find.open());
byId("show-keys").addEventListener("click", () => keys.open());
setUpKeys({
	undo: () => store.undo(),
	redo: () => store.redo(),
	find: () => find.open(),
	keys: () => keys.openByKey(),
});
setUpTopBar(store, opened, {
	start,
	moveOn: () => moveOnDialog({ store, goTo, tell }),
	earlierDrafts: () => showEarlierDrafts(ways),
});
setUpMenu(byId("menu"), byId("rail"));
takeDroppedFiles(document.body, opened);
byId("skip").addEventListener("click", (event) => {
	event.preventDefault();
	byId("sheet").focus();
});
window.addEventListener("hashchange", openSheet);
window.addEventListener("beforeunload", (event) => {
	if (draftTrouble !== undefined && store.state.unsaved) event.preventDefault();
});
openSheet();
void offerDraft(ways);
bringWhenIdle();
