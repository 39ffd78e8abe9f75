import { mkdir } from "node:fs/promises";
import { dirname, join } from "node:path";
import type { StagedFile } from "./growingFile.ts";
import { stagedFile } from "./stagedFile.ts";
import { takeNames } from "./takeNames.ts";

/**
 * Writes files into a folder, which is made where it does not exist.
 *
 * Each file is whole or as it was before, whenever the process is killed or the power goes:
 * all are first written beside their places under other names, and only when every one is on
 * the disk do they take their names, one after the other. So where one cannot be written, for
 * example because the disk is full, none has changed.
 *
 * @throws the file system's own error, where it cannot.
 */
export async function writeFiles(
	path: string,
	files: Readonly<Record<string, string | Uint8Array>>,
): Promise<void> {
	const staged: StagedFile[] = [];
	try {
		for (const [name, contents] of Object.entries(files)) {
			const file = join(path, name);
			await mkdir(dirname(file), { recursive: true });
			staged.push(await stagedFile(file, contents));
		}
		await takeNames(staged);
	} catch (error) {
		for (const { discard } of staged) await discard();
		throw error;
	}
}
