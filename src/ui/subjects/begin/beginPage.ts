import { isAsked, isGiven } from "../../../core/edit/begin/beginEntry.ts";
import { say } from "../../../core/say.ts";
import { el, fill } from "../../dom/el.ts";
import { renew } from "../../dom/renew.ts";
import type { OwnPage, View } from "../../page.ts";
import { pageHead } from "../../sheet/pageHead.ts";
import type { State } from "../../state/store.ts";
import { beginTitle } from "./beginTitle.ts";
import { type EntryLine, entryLine } from "./entryLine.ts";
import { firstAnswer, missingEntries, missingWords } from "./firstAnswer.ts";
import { askedEntries, type ShownEntry, shownEntries } from "./shownEntries.ts";

/** From an empty workbook to a plan: the few things that it needs, one field each, written into the ordinary sheets. */
export const beginPage: OwnPage = {
	mount(place, around) {
		const { store } = around;
		const title = el("h1", {});
		const said = el("p", { role: "status", class: "begin-missing" });
		const answer = el("div", {});
		const enter = (entry: ShownEntry, text: string) => {
			const { workbook } = store.state;
			if (text.trim() === entry.read(workbook)) return undefined;
			const written = entry.write(workbook, text);
			if (typeof written === "string") return written;
			store.edit(written);
			return undefined;
		};
		const lines: readonly EntryLine[] = shownEntries.map((entry) =>
			entryLine(entry, { enter, next: goOn }),
		);
		/** To the next entry that is open; after the last one to the plan. */
		function goOn(entry: ShownEntry): void {
			const { workbook } = store.state;
			const at = shownEntries.indexOf(entry);
			const isOpen = (line: EntryLine) =>
				isAsked(line.entry, workbook) && !isGiven(line.entry, workbook);
			const next = lines.slice(at + 1).find(isOpen) ?? lines.find(isOpen);
			(next?.control ?? document.getElementById("begin-open"))?.focus();
		}
		fill(
			place,
			pageHead(title, beginTitle.about),
			el(
				"div",
				{ class: "begin" },
				el("ol", { class: "begin-lines" }, ...lines.map(({ element }) => element)),
				el("aside", { class: "begin-so-far", "aria-label": say`So far` }, said, answer),
			),
		);
		const view: View = {
			file: beginTitle.file,
			paint(state) {
				renew(title, beginHeadline(state));
				for (const line of lines) line.paint(state.workbook);
				said.textContent = missingWords(state);
				fill(answer, ...firstAnswer(state, around));
			},
			show() {},
			destroy() {},
		};
		view.paint(store.state);
		const isUntouched = (entry: ShownEntry) =>
			entry.isFilled || !isGiven(entry, store.state.workbook);
		if (shownEntries.every(isUntouched)) lines[0]?.control.focus();
		return view;
	},
};

function beginHeadline(state: State): string {
	const missing = missingEntries(state).length;
	const asked = askedEntries(state.workbook).filter(({ isFilled }) => !isFilled).length;
	if (missing > 1) return say`${asked} entries to the first plan: ${missing} are still missing`;
	if (missing === 1) return say`${asked} entries to the first plan: one is still missing`;
	return state.plan.made ? say`The first plan is ready` : say`The plan needs something else`;
}
