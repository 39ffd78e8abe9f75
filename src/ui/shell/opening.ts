import { demoWorkbook } from "../book/demo.ts";
import { keptDraft } from "../book/draft.ts";
import { emptyWorkbook } from "../book/emptyWorkbook.ts";
import type { Store } from "../book/store.ts";
import { byId, el, fill } from "../dom/el.ts";

/** Where a draft was kept, asks whether to go on with it before anything can be written over it. */
export function offerDraft(store: Store): void {
	const draft = keptDraft();
	if (!draft) return;
	const dialog = byId("opening") as HTMLDialogElement;
	const choice = (words: string, act: () => void, main = false) =>
		el(
			"button",
			{
				type: "button",
				class: main ? "main" : undefined,
				onclick: () => {
					act();
					dialog.close();
				},
			},
			words,
		);
	const goOn = () => store.open(draft.workbook);
	fill(
		dialog,
		el("h2", {}, "Go on where you left off?"),
		el(
			"p",
			{},
			`A draft was kept on this computer on ${new Date(draft.keptAt).toLocaleString()}. A draft is not a saved workbook: save it to a file.`,
		),
		el(
			"div",
			{ class: "choices-row" },
			choice("Go on with the draft", goOn, true),
			choice("Start from the demo", () => store.open(demoWorkbook())),
			choice("Start empty", () => store.open(emptyWorkbook())),
		),
	);
	dialog.addEventListener("cancel", goOn, { once: true });
	dialog.showModal();
}
