import type { Store } from "../book/store.ts";

/** Ctrl+Z and Ctrl+Y (or Ctrl+Shift+Z) over all sheets; a field that is being typed in keeps its own. */
export function setUpKeys(store: Store): void {
	document.addEventListener("keydown", (event) => {
		if (!(event.ctrlKey || event.metaKey) || event.altKey || isBeingTypedIn(event.target)) return;
		const key = event.key.toLowerCase();
		if (key === "z" && !event.shiftKey) store.undo();
		else if (key === "y" || key === "z") store.redo();
		else return;
		event.preventDefault();
	});
}

/** The grid's own field counts only while it is open; closed, it lies outside the page. */
function isBeingTypedIn(target: EventTarget | null): boolean {
	if (!(target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement)) return false;
	return target.getBoundingClientRect().left > 0 && target.value !== target.defaultValue;
}
