import type { Sheet } from "../core/sheet.ts";
import { sheetOf } from "../core/sheets/sheetOf.ts";
import { withoutBlankEnds } from "../core/withoutBlankEnds.ts";
import type { TextTable } from "../core/workbook.ts";
import { fits, looksLike, sheetByHeader } from "./sheetByHeader.ts";
import type { Claim } from "./sheetNamed.ts";

/** The sheet that a table is, with its columns by their plain names, or the one that it seems to be meant as. */
export type SheetIn =
	| { readonly sheet: Sheet; readonly table: TextTable }
	| { readonly meant: Sheet | undefined };

/**
 * Takes a table for the sheet that it is by its name or, where its name says nothing or
 * says what its first line contradicts, by its first line.
 */
export function sheetIn(table: TextTable, claim: Claim | undefined): SheetIn {
	const sheet = sheetFor(claim, table.header);
	if (!sheet) return { meant: claim ? sheetOf(claim.file) : looksLike(table.header) };
	return {
		sheet,
		table: withoutBlankEnds({ ...table, header: table.header.map(keyIn(sheet)) }),
	};
}

/** A file under a sheet's own name is that sheet, whatever is wrong with it; any other must have the columns. */
function sheetFor(claim: Claim | undefined, header: readonly string[]): Sheet | undefined {
	const named = claim && sheetOf(claim.file);
	if (named && (claim.exact || fits(named, header))) return named;
	return sheetByHeader(header);
}

/** A column of the format by its plain name: " births" is births. Names of one's own stay as they are. */
function keyIn({ columns }: Sheet): (key: string) => string {
	return (key) => {
		const plain = key.trim();
		if (Object.hasOwn(columns, plain)) return plain;
		return Object.hasOwn(columns, plain.toLowerCase()) ? plain.toLowerCase() : key;
	};
}
