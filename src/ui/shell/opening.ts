import { say } from "../../core/say.ts";
import { demoWorkbook } from "../book/demo.ts";
import { type Draft, keptDrafts } from "../book/draft.ts";
import { emptyWorkbook } from "../book/emptyWorkbook.ts";
import type { Store } from "../book/store.ts";
import { byId, type Child, el, fill } from "../dom/el.ts";

/** Where drafts were kept, asks which to go on with; the others stay for the next opening. */
export function offerDraft(store: Store): void {
	const [last, ...earlier] = keptDrafts();
	if (!last) return;
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
	const goOn = (draft: Draft) => () => store.open(draft.workbook);
	fill(
		dialog,
		el("h2", {}, say`Go on where you left off?`),
		el(
			"p",
			{},
			say`A draft of ${named(last)} was kept on this computer. A draft is not a saved workbook: save it to a file.`,
		),
		el(
			"div",
			{ class: "choices-row" },
			choice(say`Go on with the draft`, goOn(last), true),
			choice(say`Start from the demo`, () => store.open(demoWorkbook())),
			choice(say`Start empty`, () => store.open(emptyWorkbook())),
		),
		...earlierDrafts(earlier, (draft) => choice(named(draft), goOn(draft))),
	);
	dialog.addEventListener("cancel", goOn(last), { once: true });
	dialog.showModal();
}

function earlierDrafts(drafts: readonly Draft[], button: (draft: Draft) => HTMLElement): Child[] {
	if (drafts.length === 0) return [];
	return [
		el("p", {}, say`Earlier drafts, and those of other windows:`),
		el("ul", { class: "drafts" }, ...drafts.map((draft) => el("li", {}, button(draft)))),
	];
}

/** Unit and time of a draft, by which a person knows it again. */
function named({ workbook, keptAt }: Draft): string {
	const rows = workbook.tables["unit.csv"]?.rows ?? [];
	const unit = rows.find(([key]) => key === "unit_name")?.[1] || say`an unnamed unit`;
	return `${unit}, ${new Date(keptAt).toLocaleString()}`;
}
