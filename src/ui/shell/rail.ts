import type { State } from "../book/store.ts";

/** Marks the open sheet in the rail, and the sheets on which something waits to be put right. */
export function paintRail(rail: HTMLElement, state: State, open: string): void {
	for (const link of rail.querySelectorAll<HTMLAnchorElement>("a[data-sheet]")) {
		const file = link.dataset.sheet ?? "";
		if (file === open) link.setAttribute("aria-current", "page");
		else link.removeAttribute("aria-current");
		const errors = state.plan.problems.filter(
			(p) => p.weight === "error" && p.file === file,
		).length;
		const mark = link.querySelector<HTMLElement>(".rail-mark");
		if (!mark) continue;
		mark.hidden = errors === 0;
		mark.textContent = errors === 0 ? "" : `! ${errors}`;
		mark.setAttribute("aria-label", errors === 1 ? "1 problem" : `${errors} problems`);
	}
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
