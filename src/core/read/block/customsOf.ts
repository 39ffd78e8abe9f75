import {
	agreed,
	allowedOne,
	isOpen,
	onlyOne,
	type TwoReadings,
	type Which,
} from "./twoReadings.ts";

/** What one sheet of a block tells about the custom it was written in. */
export interface SheetReadings {
	readonly cells: readonly TwoReadings[];
	/** What the separator between its cells says, where it says something. */
	readonly separator?: Which | undefined;
}

/**
 * The custom of each sheet of a block, undefined where nothing tells.
 *
 * What is nearer counts more: the sheet's own texts that mean something in one way only,
 * then its separator, then what its columns allow, then the texts of the other sheets. A
 * sheet whose own texts contradict each other has no custom: each of its texts stands for
 * itself, and what is open is asked. The other sheets may be this program's own and so
 * cannot vouch for the point of a text like 1.400 from elsewhere.
 *
 * @param asked what the person answered, where they did
 */
export function customsOf(
	sheets: readonly SheetReadings[],
	asked: Which | undefined,
): (Which | undefined)[] {
	const all = agreed(sheets.flatMap(({ cells }) => cells.map(onlyOne)));
	return sheets.map(({ cells, separator }) => {
		const own = agreed(cells.map(onlyOne));
		if (own === "both") return asked;
		const allowed = agreed(cells.map(allowedOne));
		const nearest = own ?? separator ?? (allowed === "both" ? undefined : allowed);
		const far =
			all === "both" || cells.some((c) => isOpen(c) && c.ownOnly === all) ? undefined : all;
		return nearest ?? far ?? asked;
	});
}
