import type { Problem } from "../core/problem.ts";
import type { BlockTable } from "../core/read/block/blockTable.ts";
import type { TextTable } from "../core/workbook.ts";
import { decode } from "./decode.ts";
import { endingIn } from "./fileEndings.ts";
import { otherProgram, tooLargeFile, unknownFile, unreadSheet } from "./fileProblems.ts";
import { readCsv } from "./readCsv.ts";
import { sheetIn } from "./sheetIn.ts";
import { type Claim, otherProgramsSheet } from "./sheetNamed.ts";
import type { NamedBytes } from "./unzip.ts";
import { MOST_BYTES } from "./zipRefusals.ts";

const TEXT = endingIn("text");

/** What one file turned out to be. */
export type SheetFile = { readonly problems: readonly Problem[] } & (
	| { readonly as: "sheet"; readonly table: BlockTable }
	/** Of a newer edition, which knows it: kept as it is. */
	| { readonly as: "newer"; readonly table: TextTable }
	/** Of a person's own, that belongs to no workbook. */
	| { readonly as: "other" }
	| { readonly as: "nothing" }
);

interface How {
	readonly encoding: string | undefined;
	readonly isNewer: boolean;
}

/** Reads one file of text as the sheet that it is. */
export function readSheetFile(
	name: string,
	{ bytes }: NamedBytes,
	claim: Claim | undefined,
	{ encoding, isNewer }: How,
): SheetFile {
	const nothing = (...problems: readonly Problem[]): SheetFile => ({ as: "nothing", problems });
	const other: SheetFile = { as: "other", problems: [unknownFile(name)] };
	const mayBeText = claim !== undefined || TEXT.test(name);
	if (!mayBeText) {
		const meant = otherProgramsSheet(name);
		return meant ? nothing(otherProgram(name, meant)) : other;
	}
	if (bytes.length > MOST_BYTES) return nothing(tooLargeFile(name, bytes.length));
	const decoded = decode(claim?.exact ? claim.file : name, bytes, encoding);
	if (!decoded.ok) return claim ? nothing(decoded.problem) : other;
	const { table, problems: wrong, refused, separator } = readCsv(name, decoded.text);
	const problems = [...(decoded.advice ? [decoded.advice] : []), ...wrong];
	if (refused) return claim ? nothing(...problems) : other;
	const found = sheetIn(table, claim);
	if ("sheet" in found) return { as: "sheet", table: { ...found, separator }, problems };
	if (isNewer) return { as: "newer", table, problems };
	return found.meant ? nothing(unreadSheet(name, found.meant)) : other;
}
