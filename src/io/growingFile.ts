import { type FileHandle, open, realpath, rename, rm, stat } from "node:fs/promises";
import { dirname } from "node:path";
import { begunBeside } from "./begunBeside.ts";

/** A file that is whole on the disk, but does not have its name yet. */
export interface StagedFile {
	readonly folder: string;
	/** Puts it in the place of what had its name, at one moment. */
	takeName(): Promise<void>;
	/** Lets it go, where it has not taken its name. */
	discard(): Promise<void>;
}

/** A file that is written bit by bit beside its place, under a name that nothing reads. */
export interface GrowingFile {
	append(contents: string | Uint8Array): Promise<void>;
	/** Brings it onto the disk; nothing is appended any more. */
	end(): Promise<StagedFile>;
	discard(): Promise<void>;
}

/** Begins a file. What is no file but takes bytes, as the terminal does, is written at once. */
export async function growingFile(path: string): Promise<GrowingFile> {
	const place = await realpath(path).catch(() => path);
	const before = await stat(place).catch(() => undefined);
	if (before && !before.isFile()) return grown(await open(place, "w"), place);
	const staged = await begunBeside(place);
	return grown(await open(staged, "w", before?.mode), place, staged);
}

/** @param staged where it is until it takes its name; left out, it has it already */
function grown(file: FileHandle, place: string, staged?: string): GrowingFile {
	const letGo = async () => {
		if (staged) await rm(staged, { force: true });
	};
	return {
		append: (contents) => file.appendFile(contents),
		async end() {
			if (staged) await file.sync();
			await file.close();
			const takeName = async () => {
				if (staged) await rename(staged, place);
			};
			return { folder: dirname(place), takeName, discard: letGo };
		},
		async discard() {
			await file.close().catch(() => undefined);
			await letGo();
		},
	};
}
