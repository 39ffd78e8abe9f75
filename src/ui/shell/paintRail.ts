import { say } from "../../core/say.ts";
import type { State } from "../state/store.ts";
import { questionOrder } from "./questionOrder.ts";
import { listedAs } from "./viewsWith.ts";

/** Puts the questions in their order, and marks the sheet on the screen and where something waits to be put right. */
export function paintRail(rail: HTMLElement, state: State, open: string): void {
	inOrder(rail, state);
	const errors = state.plan.problems.filter((problem) => problem.weight === "error");
	for (const link of rail.querySelectorAll<HTMLAnchorElement>("a[data-sheet]")) {
		const { sheet } = link.dataset;
		mark(link, errors.filter((problem) => listedAs(problem.file) === sheet).length);
		if (sheet === open) link.setAttribute("aria-current", "page");
		else if (sheet === listedAs(open)) link.setAttribute("aria-current", "true");
		else link.removeAttribute("aria-current");
	}
	for (const fold of rail.querySelectorAll("details")) {
		const files = new Set(sheetsIn(fold));
		mark(
			fold.querySelector(":scope > summary"),
			errors.filter(({ file }) => files.has(file)).length,
		);
	}
}

/** Unfolds the question to which a sheet belongs, and within it what is folded away, and folds the others. */
export function unfold(rail: HTMLElement, open: string): void {
	for (const fold of rail.querySelectorAll("details")) fold.open = sheetsIn(fold).includes(open);
}

function sheetsIn(fold: HTMLElement): string[] {
	const links = [...fold.querySelectorAll<HTMLAnchorElement>("a[data-sheet]")];
	return links.map((link) => link.dataset.sheet ?? "");
}

/** Moves the questions only where their order is another one: what has the focus keeps it. */
function inOrder(rail: HTMLElement, state: State): void {
	const place = rail.querySelector("#questions");
	const questions = [...rail.querySelectorAll<HTMLElement>("[data-question]")];
	const order = questionOrder(state);
	if (questions.map((each) => each.dataset.question).join() !== order.join())
		for (const name of order)
			place?.append(...questions.filter((q) => q.dataset.question === name));
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
