import type { Opened } from "./readGiven.ts";

/** A copy that was opened to be brought together with the workbook on the screen; its page shows it. */
let waiting: Opened | undefined;
let tell: () => void = () => undefined;

export function otherCopy(): Opened | undefined {
	return waiting;
}

export function keepOtherCopy(opened: Opened | undefined): void {
	waiting = opened;
	tell();
}

/** Tells the page of copies, while it stands, that another one is there. */
export function whenOtherCopy(told: () => void): void {
	tell = told;
}
