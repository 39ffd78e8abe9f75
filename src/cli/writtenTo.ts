import { writeFiles } from "../io/writeFiles.ts";
import { notWritten } from "./notWritten.ts";

/**
 * Writes the files of a command, each whole or not at all.
 *
 * @param error where it is said why they could not be written
 * @returns whether they are written
 */
export async function writtenTo(
	out: string,
	files: Readonly<Record<string, string | Uint8Array>>,
	error: Console["error"],
): Promise<boolean> {
	try {
		await writeFiles(out, files);
		return true;
	} catch (trouble) {
		error(notWritten(out, trouble));
		return false;
	}
}
