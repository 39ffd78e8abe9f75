import { digest } from "../../core/merge/digest.ts";
import { HISTORY_FILE, type History } from "./historyFile.ts";

/** Of all that a workbook remembers: a digit that is damaged would make rows others than they are. */
export function historyDigest({ saves, sheets }: Pick<History, "saves" | "sheets">): string {
	const rows = [[JSON.stringify([saves, sheets])]];
	return digest({ [HISTORY_FILE]: { header: [], rows } });
}
