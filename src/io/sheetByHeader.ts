import type { Sheet } from "../core/sheet.ts";
import { typedSheets } from "../core/sheets/typedSheets.ts";

/** Columns that every file of a sheet has, whatever its edition. */
function required({ columns }: Sheet): string[] {
	return Object.keys(columns).filter((key) => !columns[key]?.added);
}

/** Whether the first line of a file names all columns that a sheet must have. */
export function fits(sheet: Sheet, header: readonly string[]): boolean {
	const names = namesIn(header);
	return required(sheet).every((key) => names.has(key));
}

/** The one sheet whose columns a first line names; undefined where there is none, or more than one as good. */
export function sheetByHeader(header: readonly string[]): Sheet | undefined {
	const names = namesIn(header);
	const found = typedSheets
		.filter((sheet) => fits(sheet, header))
		.map((sheet) => ({
			sheet,
			known: Object.keys(sheet.columns).filter((key) => names.has(key)).length,
		}))
		.sort((a, b) => b.known - a.known);
	const [best, next] = found;
	return best && best.known > (next?.known ?? 0) ? best.sheet : undefined;
}

/** Whether a first line looks as if a sheet was meant: it names half of its columns, and two at least. */
export function looksLike(header: readonly string[]): Sheet | undefined {
	const names = namesIn(header);
	return typedSheets.find((sheet) => {
		const keys = required(sheet);
		const known = keys.filter((key) => names.has(key)).length;
		return known >= 2 && known >= keys.length / 2;
	});
}

function namesIn(header: readonly string[]): Set<string> {
	return new Set(header.map((key) => key.trim().toLowerCase()));
}
