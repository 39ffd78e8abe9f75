/** As the style sheets have it: 40rem. */
const NARROW_PX = 640;

/** Whether the screen is a phone's, on which columns of words are narrower; where there is no screen, none is. */
export function isNarrowScreen(): boolean {
	return globalThis.innerWidth < NARROW_PX;
}
