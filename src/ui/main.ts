import { settingEntry } from "../core/edit/begin/settingEntry.ts";
import { isEmpty } from "../core/edit/emptyWorkbook.ts";
import type { Place } from "../core/problem.ts";
import { say } from "../core/say.ts";
import type { Workbook } from "../core/workbook.ts";
import { byId, el, fill } from "./dom/el.ts";
import { bringWhenIdle } from "./dom/later.ts";
import { hurry, soon } from "./dom/soon.ts";
import { askForFiles, takeDroppedFiles } from "./files/askForFiles.ts";
import { readers } from "./files/bringReaders.ts";
import { keepOtherCopy } from "./files/otherCopy.ts";
import type { Opened } from "./files/readGiven.ts";
import { findOpener } from "./find/findOpener.ts";
import { workWithDaysAround } from "./format/shownDay.ts";
import type { Page, View } from "./page.ts";
import { printedFoot, printedHead } from "./print/printedHead.ts";
import { beforePrint } from "./print/printOut.ts";
import { problemList } from "./sheet/problemList.ts";
import { SheetView } from "./sheet/sheetView.ts";
import { documentTitle } from "./shell/documentTitle.ts";
import { hashOf } from "./shell/hashOf.ts";
import { keepSheetInLanguageLinks } from "./shell/keepSheetInLanguageLinks.ts";
import { KeysDialog } from "./shell/keysDialog.ts";
import { offerDraft, showEarlierDrafts } from "./shell/offerDraft.ts";
import { paintRail, setUpMenu, unfold } from "./shell/paintRail.ts";
import { paintTopBar, setUpTopBar } from "./shell/paintTopBar.ts";
import { paintViews } from "./shell/paintViews.ts";
import { routedPage } from "./shell/routedPage.ts";
import { setUpKeys } from "./shell/setUpKeys.ts";
import { paintRole, setUpRole } from "./shell/setUpRole.ts";
import { clockNow } from "./state/clockNow.ts";
import { demoWorkbook } from "./state/demoWorkbook.ts";
import { descentOf } from "./state/descentOf.ts";
import { hurryDraft, keepDraft } from "./state/draft.ts";
import type { ReadDraft } from "./state/keptDrafts.ts";
import { type Saved, type State, Store } from "./state/store.ts";
import { unitSetting } from "./state/unitSetting.ts";
import { beginTitle } from "./subjects/begin/beginTitle.ts";
import { twoCopiesTitle } from "./subjects/copies/twoCopiesTitle.ts";
import { mondayTitle } from "./subjects/monday/mondayTitle.ts";
import { storekeeperTitle } from "./subjects/store/storekeeperTitle.ts";
import { planTitle } from "./subjects/week/planTitle.ts";
// Last, so that it stands over the grid library's own sheet.
import "./style/workbook.css";

const store = new Store(demoWorkbook(), () => clockNow().date);
let draftTrouble: string | undefined;
let opening: { readonly page: Page; readonly stands: Promise<void> } | undefined;
let view: View | undefined;

function tell(messages: readonly string[]): void {
	fill(byId("told"), ...messages.map((words) => el("p", {}, words)));
}

const around = { store, goTo, tell };

async function goTo(place: Place): Promise<void> {
	const hash = hashOf(place.file);
	if (location.hash !== hash) history.pushState(null, "", hash);
	(await openPage())?.show(place);
}

/** Opens the page of the address; gives it once it stands, unless another was asked for meanwhile. */
async function openPage(): Promise<View | undefined> {
	const page = routedPage(location.hash);
	workWithDaysAround(unitSetting(store.state, "plan_start"));
	if (opening?.page !== page) opening = { page, stands: stand(page) };
	keepSheetInLanguageLinks();
	await opening.stands;
	paintShell();
	return opening?.page === page ? view : undefined;
}

/** Brings a page on the screen in place of the one before. */
async function stand(page: Page): Promise<void> {
	tell([]);
	const on = await page.load().catch(() => undefined);
	if (opening?.page !== page) return;
	if (!on) {
		opening = undefined;
		tell([say`This page could not be loaded. Nothing is lost; open it again a little later.`]);
		return;
	}
	view?.destroy();
	const sheet = byId("sheet");
	view = "mount" in on ? on.mount(sheet, around) : new SheetView(page, on, sheet, around);
	unfold(byId("rail"), page.file);
	window.scrollTo(0, 0);
}

function paintShell(): void {
	const { state } = store;
	document.title = documentTitle(routedPage(location.hash), state);
	paintRail(byId("rail"), state, view?.file ?? "");
	paintViews(byId("views"), view?.file ?? "");
	paintRole(state);
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

async function opened(files: Opened): Promise<void> {
	const isForCopies = view?.file === twoCopiesTitle.file;
	const { askBeforeReplacing, openedWorkbook, readCopy } = await readers.bring();
	const answer = isForCopies ? "together" : await askBeforeReplacing(store.state, files);
	if (answer === "together") return bringTogether(files);
	if (!answer) return tell([say`Nothing was opened; the workbook stands as it was.`]);
	const { workbook, problems, file, history } = files;
	const { workbook: next, isAnother, told } = openedWorkbook(store.state.workbook, workbook);
	const descent = history && isAnother ? readCopy({ workbook, history }).descent : undefined;
	const saved = {
		saved: next,
		own: true as const,
		...(file && { file }),
		...(descent && { descent }),
	};
	if (isAnother) store.open(next, problems, saved);
	else store.takeIn(next, problems);
	goToBeginning(next);
	tell([told]);
}

/** Shows what becomes of the workbook and another copy of it, before it is done. */
async function bringTogether(copy: Opened): Promise<void> {
	keepOtherCopy(copy);
	await goTo({ file: twoCopiesTitle.file, line: null, column: "" });
}

/** Another workbook from its beginning. */
function start(workbook: Workbook, saved?: Saved): void {
	store.open(workbook, [], saved);
	goToBeginning(workbook);
}

/** An empty workbook is begun on a page of its own; any other one leaves that page for its plan. */
function goToBeginning(workbook: Workbook): void {
	const file = isEmpty(workbook)
		? beginTitle.file
		: view?.file === beginTitle.file
			? planTitle.file
			: beginsInStore(workbook)
				? storekeeperTitle.file
				: undefined;
	if (file) void goTo({ file, line: null, column: "" });
}

/** Where the address names no page, a copy of the store begins with the storekeeper's. */
function beginsInStore(workbook: Workbook): boolean {
	return location.hash === "" && settingEntry("role").read(workbook) === "store";
}

function keepState({ workbook, book }: State): void {
	void keepDraft(workbook, descentOf(book.in), ({ isWriting, trouble }) => {
		byId("kept").toggleAttribute("data-keeping", isWriting);
		// Words of trouble stay until a draft is written.
		if (trouble === draftTrouble || (isWriting && !trouble)) return;
		draftTrouble = trouble;
		paintShell();
	});
}

store.subscribe((state) => {
	soon(byId("kept"), () => keepState(state));
	workWithDaysAround(unitSetting(state, "plan_start"));
	view?.paint(state);
	soon(byId("rail"), store.whole(paintShell));
});
window.addEventListener("beforeprint", () => {
	hurry();
	beforePrint(view, store.state);
});
function keepAtOnce(): void {
	hurry();
	hurryDraft();
}
window.addEventListener("pagehide", keepAtOnce);
// A page put aside paints no more, and a phone may end it without another word.
document.addEventListener("visibilitychange", () => {
	if (document.visibilityState === "hidden") keepAtOnce();
});
const ways = {
	start,
	goOn: ({ workbook, descent }: ReadDraft) => start(workbook, descent ? { descent } : {}),
	openFiles: () => askForFiles((files) => void opened(files)),
	tell,
};
const find = findOpener(() => store.state, goTo);
const keys = new KeysDialog();
byId("find").addEventListener("click", () => void find());
byId("show-keys").addEventListener("click", () => keys.open());
setUpKeys({
	undo: () => store.undo(),
	redo: () => store.redo(),
	find: () => void find(),
	keys: () => keys.openByKey(),
});
setUpTopBar(store, (files) => void opened(files), {
	start,
	moveOn: () => void goTo({ file: mondayTitle.file, line: null, column: "" }),
	earlierDrafts: () => showEarlierDrafts(ways),
});
setUpMenu(byId("menu"), byId("rail"));
setUpRole(store);
takeDroppedFiles(document.body, (files) => void opened(files));
byId("skip").addEventListener("click", (event) => {
	event.preventDefault();
	byId("sheet").focus();
});
window.addEventListener("hashchange", openPage);
// Where a page did not come, its address stands already; the same link asks for it again.
document.addEventListener("click", ({ target }) => {
	const link = target instanceof Element ? target.closest("a") : null;
	if (!opening && link?.hash && link.hash === location.hash) void openPage();
});
window.addEventListener("beforeunload", (event) => {
	if (draftTrouble !== undefined && store.state.unsaved) event.preventDefault();
});
void openPage();
void offerDraft(ways);
bringWhenIdle();
