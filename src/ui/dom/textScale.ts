/** How many times larger than usual a person's browser has all letters: 2 at 200 %. What is counted in pixels is counted for 1. */
export function textScale(): number {
	return Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / 16;
}
