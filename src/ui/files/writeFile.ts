import { type SavedFile, savedFile } from "./savedFile.ts";

/**
 * Why nothing was written. "changed": somebody else has written to the file since it
 * was last seen here; "other-plan": the plan in it begins on another day.
 */
export type Hindrance = "changed" | "other-plan" | "refused" | "gone" | "failed";

export interface WrittenFile {
	/** The file as it is now, where that could be seen. */
	readonly file: SavedFile;
	readonly hindrance?: Hindrance;
	/** The browser's own words, where it gave any. */
	readonly reason?: string;
}

/** What the browsers that can write files have, and the type library does not name. */
interface Asking {
	requestPermission?(wanted: { mode: "readwrite" }): Promise<PermissionState>;
}

/**
 * Writes a whole file, unless its bytes are others than this page last saw in it.
 *
 * Bytes and not the time of the file, which memory sticks keep to two seconds only.
 * The windows of this page write one after the other, where the browser lets them wait.
 */
export function writeFile(file: SavedFile, bytes: Uint8Array): Promise<WrittenFile> {
	const write = () => checkedWrite(file, bytes);
	return navigator.locks ? navigator.locks.request("basinbook saves", write) : write();
}

async function checkedWrite(file: SavedFile, bytes: Uint8Array): Promise<WrittenFile> {
	const { handle } = file;
	try {
		const asking = handle as FileSystemFileHandle & Asking;
		const allowed = (await asking.requestPermission?.({ mode: "readwrite" })) ?? "granted";
		if (allowed !== "granted") return { file, hindrance: "refused" };
		const now = await savedFile(handle);
		if (!isSame(now.seen, file.seen)) return { file: now, hindrance: "changed" };
		const stream = await handle.createWritable();
		try {
			await stream.write(bytes as BufferSource);
			await stream.close();
		} catch (error) {
			await stream.abort().catch(() => undefined);
			throw error;
		}
		return { file: { handle, seen: bytes } };
	} catch (error) {
		return { file, ...hindered(error) };
	}
}

function hindered(error: unknown): Pick<WrittenFile, "hindrance" | "reason"> {
	const { name, message } = error as Error;
	if (name === "NotFoundError") return { hindrance: "gone" };
	if (name === "NotAllowedError" || name === "SecurityError") return { hindrance: "refused" };
	return { hindrance: "failed", reason: message || name };
}

function isSame(one: Uint8Array, other: Uint8Array): boolean {
	return one.length === other.length && one.every((byte, at) => byte === other[at]);
}
