import { type FileHandle, mkdir, open, rename, rm } from "node:fs/promises";
import { join } from "node:path";

/** Text that waits to be written, in characters. */
const ENOUGH = 1 << 16;

/**
 * Files of one folder that are written bit by bit, and are there only when all are whole:
 * until then each has another name.
 */
export class WholeFiles {
	readonly #folder: string;
	readonly #files: ReadonlyMap<string, { readonly handle: FileHandle; text: string }>;

	private constructor(folder: string, files: ReadonlyMap<string, FileHandle>) {
		this.#folder = folder;
		this.#files = new Map([...files].map(([name, handle]) => [name, { handle, text: "" }]));
	}

	/** Begins the files with their first text; the folder is made where it does not exist. */
	static async begin(folder: string, begun: Readonly<Record<string, string>>): Promise<WholeFiles> {
		await mkdir(folder, { recursive: true });
		const files = new Map<string, FileHandle>();
		for (const name of Object.keys(begun))
			files.set(name, await open(join(folder, unfinished(name)), "w"));
		const whole = new WholeFiles(folder, files);
		for (const [name, text] of Object.entries(begun)) await whole.write(name, text);
		return whole;
	}

	async write(name: string, text: string): Promise<void> {
		const file = this.#files.get(name);
		if (!file) throw new Error(`no such file was begun: ${name}`);
		file.text += text;
		if (file.text.length < ENOUGH) return;
		await file.handle.appendFile(file.text);
		file.text = "";
	}

	/** Gives all files their names, in place of those of before. */
	async finish(): Promise<void> {
		for (const { handle, text } of this.#files.values()) {
			await handle.appendFile(text);
			await handle.sync();
			await handle.close();
		}
		for (const name of this.#files.keys())
			await rename(join(this.#folder, unfinished(name)), join(this.#folder, name));
	}

	/** Leaves nothing of what was written; files of before stay. */
	async drop(): Promise<void> {
		for (const [name, { handle }] of this.#files) {
			await handle.close().catch(() => undefined);
			await rm(join(this.#folder, unfinished(name)), { force: true });
		}
	}
}

function unfinished(name: string): string {
	return `${name}.part`;
}
