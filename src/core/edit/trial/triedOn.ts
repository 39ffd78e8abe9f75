import type { Workbook } from "../../workbook.ts";
import { trialEntries } from "./trialEntries.ts";

/** What is tried: texts by the key of their entry. */
export type Tried = ReadonlyMap<string, string>;

/** A copy of a workbook with what is tried entered in it. */
export interface TriedOn {
	readonly workbook: Workbook;
	/** Keys of the entries in which the copy differs. */
	readonly differing: readonly string[];
	/** Why a text could not be entered, by the key of its entry; the copy is then without it. */
	readonly refused: ReadonlyMap<string, string>;
}

/** A copy of a workbook with what is tried entered in it; the workbook itself stays as it is. */
export function triedOn(workbook: Workbook, tried: Tried): TriedOn {
	let copy = workbook;
	const differing: string[] = [];
	const refused = new Map<string, string>();
	for (const entry of trialEntries) {
		const text = tried.get(entry.key);
		if (text === undefined || text.trim() === entry.read(workbook)) continue;
		const written = entry.write(copy, text);
		if (typeof written === "string") refused.set(entry.key, written);
		else {
			copy = written;
			differing.push(entry.key);
		}
	}
	return { workbook: copy, differing, refused };
}
