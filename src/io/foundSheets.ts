import type { Problem } from "../core/problem.ts";
import type { BlockTable } from "../core/read/block/blockTable.ts";
import type { TextTable } from "../core/workbook.ts";
import { emptySpreadsheet, resultFiles } from "./fileProblems.ts";
import { lastOfPath } from "./lastOfPath.ts";
import { computedFiles, readGivenSheet } from "./readGivenSheet.ts";
import { readSheetFile } from "./readSheetFile.ts";
import type { Claimant } from "./settledClaim.ts";
import { sheetNamed } from "./sheetNamed.ts";
import type { GivenSheet } from "./unpackedFiles.ts";
import type { NamedBytes } from "./unzip.ts";

/** What is known of all files together. */
interface Together {
	/** The description among them says that they are this program's. */
	readonly isOurs: boolean;
	/** Of a newer edition than this program knows. */
	readonly isNewer: boolean;
	readonly encoding: string | undefined;
}

/** What a person's files hold, taken up one after the other. */
export class FoundSheets {
	/** Files that say they are a sheet, by the sheet. */
	readonly claimants = new Map<string, Claimant[]>();
	/** Sheets of a newer edition, which are kept as they are. */
	readonly newer: Record<string, TextTable> = {};
	/** Files of a person's own, that are no sheets. */
	readonly others: NamedBytes[] = [];
	readonly problems: Problem[] = [];
	readonly #results: string[] = [];

	takeFile(file: NamedBytes, { isOurs, isNewer: areNewer, encoding }: Together): void {
		const name = lastOfPath(file.name).toLowerCase();
		const claim = sheetNamed(name);
		const isNewer = areNewer && name.endsWith(".csv");
		if ((claim && computedFiles.has(claim.file)) || (isNewer && isResult(file))) {
			if (!isResult(file)) this.#results.push(name);
			return;
		}
		const read = readSheetFile(name, file, claim, { encoding, isNewer });
		for (const wrong of read.problems) this.problems.push(wrong);
		if (read.as === "sheet") this.#claim(file.name, { ...read.table, isOurs });
		else if (read.as === "other") this.others.push(file);
		else if (read.as === "newer") this.newer[name] = read.table;
	}

	/** A sheet of a spreadsheet. */
	takeSheet(sheet: GivenSheet): void {
		const read = readGivenSheet(sheet);
		for (const wrong of read.problems) this.problems.push(wrong);
		if (read.result) this.#results.push(read.name);
		else if (read.table) this.#claim(read.name, read.table);
	}

	/** After the last of them. @param empty spreadsheets that gave no sheet */
	end(empty: readonly string[]): void {
		for (const name of empty) this.problems.push(emptySpreadsheet(lastOfPath(name).toLowerCase()));
		if (this.#results.length > 0) this.problems.push(resultFiles(this.#results));
	}

	#claim(name: string, read: BlockTable): void {
		const { file } = read.sheet;
		this.claimants.set(file, [...(this.claimants.get(file) ?? []), { name, read }]);
	}
}

/** In the zip of a workbook the results have a folder of their own; nobody asked for them. */
function isResult({ name }: NamedBytes): boolean {
	return /(^|[/\\])plan[/\\]/i.test(name);
}
