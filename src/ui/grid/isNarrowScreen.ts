/** As the style sheets have it: 40rem. */
const NARROW_PX = 640;

/** Whether the screen is a phone's, on which columns of words are narrower. */
export function isNarrowScreen(): boolean {
	return window.innerWidth < NARROW_PX;
}
