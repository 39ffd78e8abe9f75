import type { Sheet } from "../sheet.ts";

const MOST_TEXTS = 3;

/**
 * What gives the name a person knows a row by: what names it in its sheet, or its first texts.
 *
 * @example of a journal "2027-03-01, gauze, G-12"
 */
export function rowName(sheet: Sheet | undefined) {
	const naming = sheet?.unique ?? sheet?.alike;
	return (columns: readonly string[], cells: readonly string[]): string => {
		const said = (at: number) => cells[at]?.trim() ?? "";
		const texts = columns.flatMap((name, at) =>
			name !== "id" && said(at) !== "" && (!naming || naming.includes(name)) ? [said(at)] : [],
		);
		return texts.slice(0, MOST_TEXTS).join(", ");
	};
}
