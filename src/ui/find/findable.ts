import type { Place } from "../../core/problem.ts";
import { folded } from "../grid/folded.ts";
import { pageOf } from "../pages.ts";

/** One text of the workbook that can be found, and the way to it. */
export interface Findable {
	readonly place: Place;
	/** Its row and column, in words; "" where none is meant. */
	readonly row: string;
	readonly column: string;
	readonly text: string;
	/** What is compared with the words asked for. */
	readonly folded: string;
}

/** @param also more words by which it is found and that are not shown */
export function findable(
	place: Place,
	{ row = "", column = "", text }: { row?: string; column?: string; text: string },
	also = "",
): Findable {
	return { place, row, column, text, folded: folded(`${text}\n${also}`) };
}

/** "Kits, line 3, Note" */
export function whereWords({ place, row, column }: Findable): string {
	return [pageOf(place.file)?.title ?? place.file, row, column]
		.filter((part) => part !== "")
		.join(", ");
}
