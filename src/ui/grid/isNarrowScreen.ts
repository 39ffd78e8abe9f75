/** Whether the screen is a phone's, on which columns of words are narrower; where there is no screen, none is. */
export function isNarrowScreen(): boolean {
	return globalThis.matchMedia?.("(max-width: 40rem)").matches ?? false;
}
