import { open } from "node:fs/promises";
import type { StagedFile } from "./growingFile.ts";

/** Gives files their names, one after the other, each at one moment. */
export async function takeNames(staged: readonly StagedFile[]): Promise<void> {
	for (const { takeName } of staged) await takeName();
	for (const folder of new Set(staged.map(({ folder }) => folder))) await namesOnDisk(folder);
}

/** Brings the names of a folder onto the disk; some systems do not let a folder be opened for that. */
async function namesOnDisk(folder: string): Promise<void> {
	const opened = await open(folder).catch(() => undefined);
	await opened?.sync().catch(() => undefined);
	await opened?.close();
}
