import { say } from "../../core/say.ts";

/** Some disks take no more than 143 bytes in a name, and letters with accents have two or more. */
const UNIT_BYTES = 70;
const DAY_BYTES = 24;

/**
 * A name for a workbook's file that every disk takes: Windows, macOS, Linux and memory sticks.
 *
 * @param first the plan's first day, as it was typed
 * @param savedOn day of saving, to tell copies of one plan apart
 * @example "basinbook Willow Ford 2027-03-01.zip"
 */
export function proposedName(unit: string, first: string, savedOn?: string): string {
	const words = ["basinbook", clean(unit, UNIT_BYTES), clean(first, DAY_BYTES)]
		.filter(Boolean)
		.join(" ");
	return `${savedOn ? say`${words} saved ${savedOn}` : words}.zip`;
}

/** Without what some disk forbids in a name or a screen hides. */
function clean(words: string, mostBytes: number): string {
	const allowed = words
		.normalize("NFC")
		.replace(/\p{Cf}/gu, "")
		.replace(/[<>:"/\\|?*\p{C}]/gu, " ")
		.replace(/\s+/g, " ");
	const letters = [...allowed.trim()];
	while (new TextEncoder().encode(letters.join("")).length > mostBytes) letters.pop();
	return letters.join("").trim();
}
