import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { type GrowingFile, growingFile, type StagedFile } from "../../io/growingFile.ts";
import { takeNames } from "../../io/takeNames.ts";

/** Text that waits to be written, in characters. */
const ENOUGH = 1 << 16;

/**
 * Files of one folder that are written bit by bit, and are there only when all are whole:
 * until then each has another name.
 */
export class WholeFiles {
	readonly #files = new Map<string, { readonly file: GrowingFile; text: string }>();

	private constructor() {}

	/** Begins the files with their first text; the folder is made where it does not exist. */
	static async begin(folder: string, begun: Readonly<Record<string, string>>): Promise<WholeFiles> {
		await mkdir(folder, { recursive: true });
		const whole = new WholeFiles();
		try {
			for (const [name, text] of Object.entries(begun))
				whole.#files.set(name, { file: await growingFile(join(folder, name)), text });
		} catch (trouble) {
			await whole.drop();
			throw trouble;
		}
		return whole;
	}

	async write(name: string, text: string): Promise<void> {
		const written = this.#files.get(name);
		if (!written) throw new Error(`no such file was begun: ${name}`);
		written.text += text;
		if (written.text.length < ENOUGH) return;
		await written.file.append(written.text);
		written.text = "";
	}

	/** Gives all files their names, in place of those of before. */
	async finish(): Promise<void> {
		const staged: StagedFile[] = [];
		for (const { file, text } of this.#files.values()) {
			await file.append(text);
			staged.push(await file.end());
		}
		await takeNames(staged);
	}

	/** Leaves nothing of what was written; files of before stay. */
	async drop(): Promise<void> {
		for (const { file } of this.#files.values()) await file.discard().catch(() => undefined);
	}
}
