import { open, readdir, realpath, rename, rm, stat, writeFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";

/** A file that is whole on the disk, but does not have its name yet. */
export interface StagedFile {
	readonly folder: string;
	/** Puts it in the place of what had its name, at one moment. */
	takeName(): Promise<void>;
	/** Lets it go, where it has not taken its name. */
	discard(): Promise<void>;
}

/**
 * Writes a file beside its place, under a name that nothing reads.
 *
 * What is no file but takes bytes, as the terminal does, is written at once.
 */
export async function stagedFile(path: string, contents: string | Uint8Array): Promise<StagedFile> {
	const place = await realpath(path).catch(() => path);
	const before = await stat(place).catch(() => undefined);
	const folder = dirname(place);
	if (before && !before.isFile()) {
		await writeFile(place, contents);
		return { folder, takeName: async () => {}, discard: async () => {} };
	}
	await withoutLeftBehind(folder, basename(place));
	const staged = join(folder, stagedName(basename(place), process.pid));
	const discard = () => rm(staged, { force: true });
	try {
		const file = await open(staged, "w", before?.mode);
		try {
			await file.writeFile(contents);
			await file.sync();
		} finally {
			await file.close();
		}
	} catch (error) {
		await discard().catch(() => undefined);
		throw error;
	}
	return { folder, takeName: () => rename(staged, place), discard };
}

const stagedName = (name: string, process: number | string) => `.${name}.${process}.part`;

/** Clears away what a process that was killed had begun for the same place. */
async function withoutLeftBehind(folder: string, name: string): Promise<void> {
	for (const other of await readdir(folder)) {
		const [, writer] = /\.(\d+)\.part$/.exec(other) ?? [];
		if (writer && other === stagedName(name, writer) && !isRunning(Number(writer)))
			await rm(join(folder, other), { force: true });
	}
}

function isRunning(process_: number): boolean {
	try {
		return process.kill(process_, 0);
	} catch (error) {
		return (error as NodeJS.ErrnoException).code === "EPERM";
	}
}
