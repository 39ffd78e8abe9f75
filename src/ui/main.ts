import type { Place } from "../core/problem.ts";
import { say } from "../core/say.ts";
import { demoWorkbook } from "./book/demo.ts";
import { keepDraft } from "./book/draft.ts";
import { hashOf, routedSheet } from "./book/route.ts";
import { Store } from "./book/store.ts";
import { byId, el, fill } from "./dom/el.ts";
import { openedWorkbook } from "./files/openedWorkbook.ts";
import { type Opened, takeDroppedFiles } from "./files/openFiles.ts";
import { setUpKeys } from "./shell/keys.ts";
import { offerDraft } from "./shell/opening.ts";
import { paintRail, setUpMenu, unfold } from "./shell/rail.ts";
import { paintTopBar, setUpTopBar } from "./shell/topBar.ts";
import { ownPages, type View } from "./views/ownPages.ts";
import { problemList } from "./views/problemList.ts";
import { SheetView } from "./views/sheetView.ts";
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
	paintShell();
}

function paintShell(): void {
	const { state } = store;
	paintRail(byId("rail"), state, view?.file ?? "");
	paintTopBar(state, draftTrouble);
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

function opened({ workbook, problems }: Opened): void {
	const result = openedWorkbook(store.state.workbook, workbook);
	if (result.workbook === store.state.workbook) store.report(problems);
	else store.open(result.workbook, problems);
	tell([result.told]);
}

store.subscribe((state) => {
	draftTrouble = keepDraft(state.workbook);
	view?.paint(state);
	paintShell();
});
setUpKeys(store);
setUpTopBar(store, opened);
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
offerDraft(store);
