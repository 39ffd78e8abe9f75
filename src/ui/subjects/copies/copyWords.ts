import { say } from "../../../core/say.ts";
import type { Opened } from "../../files/readGiven.ts";
import { listed } from "../../format/counted.ts";
import type { Preview } from "./previewOf.ts";
import { saveWords } from "./saveWords.ts";

const MOST_NAMES = 3;

/** Which copy the other one is, and where both come from. */
export function copyWords(
	{ names }: Pick<Opened, "names">,
	{ theirSave, together: { parted } }: Preview,
): string[] {
	const name = listed(names, Math.min(MOST_NAMES, names.length));
	const saved = theirSave ? saveWords(theirSave) : "";
	const from = parted ? saveWords(parted) : "";
	return [
		saved === ""
			? say`The other copy: ${name}.`
			: say`The other copy: ${name}, last saved ${saved}.`,
		!parted
			? say`The two copies remember no save that both come from. Lines that only one of them has are kept; where they differ, you choose.`
			: from === ""
				? say`Both copies come from one workbook; what was done in each since then is compared.`
				: say`Both copies come from the workbook as it was saved ${from}; what was done in each since then is compared.`,
	];
}
