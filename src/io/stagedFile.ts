import { growingFile, type StagedFile } from "./growingFile.ts";

/** Writes a file beside its place, under a name that nothing reads. */
export async function stagedFile(path: string, contents: string | Uint8Array): Promise<StagedFile> {
	const file = await growingFile(path);
	try {
		await file.append(contents);
		return await file.end();
	} catch (error) {
		await file.discard().catch(() => undefined);
		throw error;
	}
}
