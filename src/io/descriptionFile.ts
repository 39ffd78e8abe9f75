import { HISTORY_FILE } from "./history/historyFile.ts";

/** Name of the file beside the sheets that describes them. */
export const DESCRIPTION_FILE = "datapackage.json";

/** Whether a file tells of the sheets beside it, by its name in capitals or not: the description, the history. */
export function tellsOfSheets(name: string): boolean {
	return [DESCRIPTION_FILE, HISTORY_FILE].includes(name.toLowerCase());
}
