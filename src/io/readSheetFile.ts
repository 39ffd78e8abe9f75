import type { Problem } from "../core/problem.ts";
import type { BlockTable } from "../core/read/block/block.ts";
import type { Sheet } from "../core/sheet.ts";
import { sheetOf } from "../core/sheets/sheetOf.ts";
import type { TextTable } from "../core/workbook.ts";
import { readCsv } from "./csv.ts";
import { decode } from "./decode.ts";
import { tooLargeFile, unknownFile, unreadSheet } from "./fileProblems.ts";
import { fits, looksLike, sheetByHeader } from "./sheetByHeader.ts";
import type { Claim } from "./sheetNamed.ts";
import type { NamedBytes } from "./unzip.ts";
import { withoutBlankEnds } from "./withoutBlankEnds.ts";
import { MOST_BYTES } from "./zipRefusals.ts";

/** What one file turned out to be. */
export type SheetFile = { readonly problems: readonly Problem[] } & (
	| { readonly as: "sheet"; readonly table: BlockTable }
	/** Of a newer edition, which knows it: kept as it is. */
	| { readonly as: "newer"; readonly table: TextTable }
	| { readonly as: "nothing" }
);

interface How {
	readonly encoding: string | undefined;
	readonly isNewer: boolean;
}

/**
 * Reads one file of text as the sheet that it is by its name or, where its name says
 * nothing or says what its first line contradicts, by its first line.
 */
export function readSheetFile(
	name: string,
	{ bytes }: NamedBytes,
	claim: Claim | undefined,
	{ encoding, isNewer }: How,
): SheetFile {
	const nothing = (...problems: readonly Problem[]): SheetFile => ({ as: "nothing", problems });
	const mayBeText = claim !== undefined || /\.(csv|tsv|txt)$/.test(name);
	if (!mayBeText) return nothing(unknownFile(name));
	if (bytes.length > MOST_BYTES) return nothing(tooLargeFile(name, bytes.length));
	const decoded = decode(claim?.exact ? claim.file : name, bytes, encoding);
	if (!decoded.ok) return claim ? nothing(decoded.problem) : nothing(unknownFile(name));
	const { table, problems: wrong, refused, separator } = readCsv(name, decoded.text);
	const problems = [...(decoded.advice ? [decoded.advice] : []), ...wrong];
	if (refused) return claim ? nothing(...problems) : nothing(unknownFile(name));
	const sheet = sheetFor(claim, table.header);
	if (sheet) {
		const tidy = withoutBlankEnds({ ...table, header: table.header.map(keyIn(sheet)) });
		return { as: "sheet", table: { sheet, table: tidy, separator }, problems };
	}
	if (isNewer) return { as: "newer", table, problems };
	const meant = claim ? sheetOf(claim.file) : looksLike(table.header);
	return nothing(meant ? unreadSheet(name, meant) : unknownFile(name));
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
