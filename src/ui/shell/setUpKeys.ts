import { commandOf, type KeyCommand } from "./keyList.ts";

/** Where a letter is text or chooses something. */
const FIELDS = "input, textarea, select, .grid";

/** Puts the keys of the whole page to work; a field that is being typed in keeps its own. */
export function setUpKeys(acts: Readonly<Partial<Record<KeyCommand, () => void>>>): void {
	document.addEventListener("keydown", (event) => {
		const command = commandOf(event);
		const act = command && acts[command];
		const { target } = event;
		if (!act || document.querySelector("dialog[open]")) return;
		if (event.key.length === 1 && !event.ctrlKey && !event.metaKey && isIn(target, FIELDS)) return;
		// A field beside the grid keeps its text when it is left for the window of hits; a cell might not.
		if (isBeingTypedIn(target) && (command !== "find" || isIn(target, ".grid"))) return;
		event.preventDefault();
		act();
	});
}

function isIn(target: EventTarget | null, places: string): boolean {
	return target instanceof Element && target.closest(places) !== null;
}

/** The grid's own field counts only while it is open; closed, it lies outside the page. */
function isBeingTypedIn(target: EventTarget | null): boolean {
	if (!(target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement)) return false;
	return target.getBoundingClientRect().left > 0 && target.value !== target.defaultValue;
}
