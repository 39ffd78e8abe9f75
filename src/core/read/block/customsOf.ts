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
	/** Set where its decimal points are this program's. */
	readonly isOurs?: boolean | undefined;
}

/** The custom by which a text of a sheet is read; undefined where nothing tells. */
type CustomOf = (cell: TwoReadings) => Which | undefined;

/**
 * The custom of each sheet of a block.
 *
 * What is nearer counts more: the sheet's own texts that mean something in one way only,
 * then its separator, then what its columns allow, then the texts of the other sheets. A
 * sheet whose own texts contradict each other has no custom: each of its texts stands for
 * itself, and what is open is asked. The other sheets may be this program's own and so
 * cannot vouch for the point of a text like 1.400 from elsewhere.
 *
 * Points that this program wrote tell of the points beside them, as a spreadsheet of other
 * customs would have written them all anew; of a comma that was typed there they tell nothing.
 *
 * @param asked what the person answered, where they did
 */
export function customsOf(
	sheets: readonly SheetReadings[],
	asked: Which | undefined,
): readonly CustomOf[] {
	const all = agreed(sheets.flatMap((sheet) => votesOf(sheet, onlyOne)));
	return sheets.map((sheet) => {
		const custom = customOf(sheet, all) ?? asked;
		if (!sheet.isOurs) return () => custom;
		const points = customOf({ ...sheet, isOurs: false }, all) ?? asked;
		return ({ ownOnly }) => (ownOnly ? points : custom);
	});
}

/** @param all what the texts of all sheets tell */
function customOf(sheet: SheetReadings, all: Which | "both" | undefined): Which | undefined {
	const { cells, separator } = sheet;
	const own = agreed(votesOf(sheet, onlyOne));
	if (own === "both") return undefined;
	const allowed = agreed(votesOf(sheet, allowedOne));
	const nearest = own ?? separator ?? (allowed === "both" ? undefined : allowed);
	const isOther = all === "both" || cells.some((c) => isOpen(c) && c.ownOnly === all);
	return nearest ?? (isOther ? undefined : all);
}

/** What the texts of a sheet tell, each by itself. */
function votesOf(
	{ cells, isOurs }: SheetReadings,
	vote: (cell: TwoReadings) => Which | undefined,
): (Which | undefined)[] {
	const votes = cells.map(vote);
	return isOurs ? votes.map((which) => (which === "first" ? undefined : which)) : votes;
}
