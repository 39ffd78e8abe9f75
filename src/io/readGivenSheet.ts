import type { Problem } from "../core/problem.ts";
import type { BlockTable } from "../core/read/block/blockTable.ts";
import { computedSheets } from "../core/sheets/computedSheets.ts";
import { problemsSheet } from "../core/sheets/problems.ts";
import { unknownFile, unreadSheet } from "./fileProblems.ts";
import { lastOfPath } from "./lastOfPath.ts";
import { sheetIn } from "./sheetIn.ts";
import { type Claim, sheetNamed } from "./sheetNamed.ts";
import type { GivenSheet } from "./unpackedFiles.ts";

/** Files of results, which nobody types. */
export const computedFiles = new Set([...computedSheets, problemsSheet].map(({ file }) => file));

interface ReadSheet {
	/** The file and, in brackets, the sheet in it. */
	readonly name: string;
	readonly problems: readonly Problem[];
	readonly table?: BlockTable;
	/** Set where it is a result of an earlier plan. */
	readonly result?: true;
}

/** Takes a sheet of a spreadsheet for the sheet that it is by its own name, its file's where it is alone in it, or its first row. */
export function readGivenSheet({ file, sheet, only }: GivenSheet): ReadSheet {
	const whole = lastOfPath(file);
	const name = only ? whole : `${whole} (${sheet.name})`;
	const claim = claimOf(sheet.name) ?? (only ? claimOf(whole.replace(/\.\w+$/, "")) : undefined);
	if (claim && computedFiles.has(claim.file)) return { name, problems: [], result: true };
	const found = sheetIn(sheet.table, claim);
	if ("sheet" in found)
		return { name, problems: [], table: { ...found, isNumber: sheet.isNumber } };
	return { name, problems: [found.meant ? unreadSheet(name, found.meant) : unknownFile(name)] };
}

function claimOf(name: string): Claim | undefined {
	return sheetNamed(`${name}.csv`);
}
