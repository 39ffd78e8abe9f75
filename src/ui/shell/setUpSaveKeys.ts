import { byId } from "../dom/el.ts";

/**
 * Ctrl+S saves the workbook, with Shift as another file; the browser's own saving
 * would keep the page without anything that was typed.
 */
export function setUpSaveKeys(save: (asAnother: boolean) => void): void {
	document.addEventListener("keydown", (event) => {
		const isSave = (event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "s";
		if (!isSave || event.altKey) return;
		event.preventDefault();
		if (document.querySelector("dialog[open]")) return;
		if (isBeingTypedIn(event.target)) endTyping(event.target);
		// The grid hands an ended edit on a moment later.
		setTimeout(() => save(event.shiftKey));
	});
}

/** The grid's own field lies outside the page while no cell is edited. */
function isBeingTypedIn(target: EventTarget | null): target is HTMLElement {
	const isField = target instanceof HTMLElement && target.matches("input, textarea, select");
	return isField && target.getBoundingClientRect().left > 0;
}

/** What is being typed is kept as under a click beside it. */
function endTyping(field: HTMLElement): void {
	byId("save-workbook").dispatchEvent(new MouseEvent("mousedown", { bubbles: true }));
	field.blur();
}
