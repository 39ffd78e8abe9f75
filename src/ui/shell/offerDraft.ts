import { emptyWorkbook } from "../../core/edit/emptyWorkbook.ts";
import { say } from "../../core/say.ts";
import type { Workbook } from "../../core/workbook.ts";
import { byId, type Child, el, fill } from "../dom/el.ts";
import { shownDayAndYear } from "../format/shownDay.ts";
import { demoWorkbook } from "../state/demoWorkbook.ts";
import { type KeptDraft, keptDrafts, type ReadDraft, readDraft } from "../state/keptDrafts.ts";
import { titleOf } from "./titleOf.ts";

/** What the page does with the answer. */
interface Ways {
	start(workbook: Workbook): void;
	/** A draft is in no file yet. */
	goOn(draft: ReadDraft): void;
	/** Asks for a saved workbook. */
	openFiles(): void;
	tell(messages: readonly string[]): void;
}

/** Where drafts were kept, asks which to go on with; the others stay for the next opening. Who comes for the first time is asked how to begin. */
export async function offerDraft(ways: Ways): Promise<void> {
	const [last, ...earlier] = await keptDrafts();
	if (!last) return offerBeginning(ways);
	const { dialog, close, goOn, choice } = draftDialog(ways);
	show(
		dialog,
		say`Go on where you left off?`,
		say`A draft of ${named(last)} was kept on this computer. A draft is not a saved workbook: save it to a file.`,
		el(
			"div",
			{ class: "choices-row" },
			choice(say`Go on with the draft`, () => goOn(last), true),
			...beginnings(
				ways,
				choice(say`Start from the demo`, () => {
					close();
					ways.start(demoWorkbook());
				}),
				say`Start empty`,
			),
		),
		earlier.length > 0 && el("p", {}, say`Earlier drafts, and those of other windows:`),
		draftList(earlier, (draft) => choice(named(draft), () => goOn(draft))),
	);
	dialog.oncancel = (event) => {
		event.preventDefault();
		goOn(last);
	};
}

/** The ways to begin without a draft. */
function beginnings(ways: Ways, demo: HTMLElement, empty: string): HTMLElement[] {
	const { close, choice } = draftDialog(ways);
	const after = (act: () => void) => () => {
		close();
		act();
	};
	return [
		choice(say`Open a saved workbook`, after(ways.openFiles)),
		demo,
		choice(
			empty,
			after(() => ways.start(emptyWorkbook())),
		),
	];
}

/** An address that names a page was asked for by somebody who knows where to go. */
function offerBeginning(ways: Ways): void {
	if (location.hash !== "") return;
	const { dialog, close, choice } = draftDialog(ways);
	show(
		dialog,
		say`How do you want to begin?`,
		say`For the nurses, midwives and storekeepers of a maternity unit: this workbook says how many newborn resuscitation kits must be ready, what to clean, mix, boil and order for them, and by when. The demo is an invented unit to look at and to try things on. What you enter stays on this computer until you save it to a file.`,
		el(
			"div",
			{ class: "choices-row" },
			// It is open already, and nothing of it needs to be kept.
			...beginnings(ways, choice(say`Look at the demo`, close), say`Begin empty`),
		),
	);
	dialog.oncancel = null;
}

/** The drafts of earlier visits and of other windows, to go back to one of them. */
export async function showEarlierDrafts(ways: Ways): Promise<void> {
	const drafts = await keptDrafts();
	const { dialog, close, goOn, choice } = draftDialog(ways);
	show(
		dialog,
		say`Earlier drafts`,
		drafts.length > 0
			? say`Drafts of earlier visits and of other windows. Undo brings back the workbook that is on the screen now.`
			: say`No earlier draft is kept in this browser.`,
		draftList(drafts, (draft) => choice(named(draft), () => goOn(draft))),
		el("div", { class: "choices-row" }, choice(say`Close`, close)),
	);
	dialog.oncancel = null;
}

function draftDialog({ goOn, tell }: Ways) {
	const dialog = byId("opening") as HTMLDialogElement;
	const close = () => dialog.close();
	const choice = (words: string, act: () => void, main = false) =>
		el("button", { type: "button", class: main ? "main" : undefined, onclick: act }, words);
	return {
		dialog,
		close,
		choice,
		async goOn(draft: KeptDraft): Promise<void> {
			const read = await readDraft(draft);
			if (!read) {
				const damaged = say`The draft of ${named(draft)} is damaged and cannot be opened. It was left where it is; choose another one.`;
				return fill(byId("draft-trouble"), damaged);
			}
			close();
			goOn(read);
			tell(remarks(draft, read.damaged.map(titleOf)));
		},
	};
}

function remarks({ isOpen }: KeptDraft, damaged: readonly string[]): string[] {
	return [
		...(isOpen
			? [
					say`This draft is open in another window too. From here on each window keeps a draft of its own: save them to different files.`,
				]
			: []),
		...(damaged.length > 0
			? [
					say`These sheets of the draft were damaged and could not be opened: ${damaged.join(", ")}. The other sheets stand as they were.`,
				]
			: []),
	];
}

function show(dialog: HTMLDialogElement, title: string, text: string, ...rest: Child[]): void {
	dialog.setAttribute("aria-label", title);
	fill(
		dialog,
		el("h2", {}, title),
		el("p", {}, text),
		el("p", { id: "draft-trouble", class: "reason", role: "alert" }),
		...rest,
	);
	dialog.showModal();
}

function draftList(drafts: readonly KeptDraft[], button: (draft: KeptDraft) => HTMLElement): Child {
	return (
		drafts.length > 0 &&
		el("ul", { class: "drafts" }, ...drafts.map((draft) => el("li", {}, button(draft))))
	);
}

/** Unit and time of a draft, by which a person knows it again. */
function named({ unit, keptAt, isOpen }: KeptDraft): string {
	const at = new Date(keptAt);
	// The Swedish way of writing a date is the international one, in this computer's own time.
	const day = shownDayAndYear(at.toLocaleDateString("sv"));
	const name = `${unit || say`an unnamed unit`}, ${day}, ${at.toLocaleTimeString("sv")}`;
	return isOpen ? say`${name} (open in another window)` : name;
}
