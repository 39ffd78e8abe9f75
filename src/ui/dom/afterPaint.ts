/** Does a thing when the browser has painted what has been changed up to now. */
export function afterPaint(work: () => void): void {
	// A task posted in a frame comes after that frame's painting.
	requestAnimationFrame(() => setTimeout(work));
}
