/** A file of the person's that this page may write, and what it held when the page last saw it. */
export interface SavedFile {
	readonly handle: FileSystemFileHandle;
	readonly seen: Uint8Array;
}

/** Takes a file as it is now. @throws the browser's error where it cannot be read */
export async function savedFile(handle: FileSystemFileHandle): Promise<SavedFile> {
	return { handle, seen: await bytesOf(await handle.getFile()) };
}

export async function bytesOf(file: File): Promise<Uint8Array> {
	return new Uint8Array(await file.arrayBuffer());
}
