const ROOM_PX = 8;

/** Scrolls the page so that a cell is not hidden by what lies over the foot of the screen. */
export function keepInSight(cell: Element | undefined, over: HTMLElement): void {
	if (!cell || getComputedStyle(over).position !== "fixed") return;
	const hidden = cell.getBoundingClientRect().bottom + ROOM_PX - over.getBoundingClientRect().top;
	if (hidden > 0) window.scrollBy(0, hidden);
}
