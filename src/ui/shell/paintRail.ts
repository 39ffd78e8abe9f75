import { say } from "../../core/say.ts";
import type { State } from "../state/store.ts";

/** Opens the question of the sheet on the screen, and marks where something waits to be put right. */
export function paintRail(rail: HTMLElement, state: State, open: string): void {
	const errors = state.plan.problems.filter((problem) => problem.weight === "error");
	for (const question of rail.querySelectorAll("details")) {
		let ofQuestion = 0;
		for (const link of question.querySelectorAll<HTMLAnchorElement>("a[data-sheet]")) {
			const ofSheet = errors.filter((problem) => problem.file === link.dataset.sheet).length;
			ofQuestion += ofSheet;
			mark(link, ofSheet);
			if (link.dataset.sheet === open) link.setAttribute("aria-current", "page");
			else link.removeAttribute("aria-current");
		}
		mark(question.querySelector("summary"), ofQuestion);
	}
}

/** Unfolds the question to which a sheet belongs and folds the others. */
export function unfold(rail: HTMLElement, open: string): void {
	for (const question of rail.querySelectorAll("details"))
		question.open = question.querySelector(`a[data-sheet="${CSS.escape(open)}"]`) !== null;
}

function mark(place: Element | null, count: number): void {
	const found = place?.querySelector<HTMLElement>(".rail-mark");
	if (!found) return;
	found.hidden = count === 0;
	found.textContent = count === 0 ? "" : `! ${count}`;
	found.setAttribute("aria-label", count === 1 ? say`1 problem` : say`${count} problems`);
}

/** On a narrow screen the rail is a menu behind a button. */
export function setUpMenu(button: HTMLElement, rail: HTMLElement): void {
	const set = (open: boolean) => {
		rail.classList.toggle("open", open);
		button.setAttribute("aria-expanded", String(open));
	};
	button.addEventListener("click", () => set(!rail.classList.contains("open")));
	rail.addEventListener("click", (event) => {
		if ((event.target as Element).closest("a")) set(false);
	});
	rail.addEventListener("keydown", (event) => {
		if (event.key !== "Escape") return;
		set(false);
		button.focus();
	});
}
