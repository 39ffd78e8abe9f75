import { mkdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";

/**
 * Writes files into a folder, which is made where it does not exist.
 *
 * @throws the file system's own error, where it cannot.
 */
export async function writeFiles(
	path: string,
	files: Readonly<Record<string, string | Uint8Array>>,
): Promise<void> {
	for (const [name, contents] of Object.entries(files)) {
		const file = join(path, name);
		await mkdir(dirname(file), { recursive: true });
		await writeFile(file, contents);
	}
}
