/** A file, and where it lay among those that were given with it. */
export interface GivenFile {
	/** With the folders it lay in, for example "Kisumu/unit.csv". */
	readonly path: string;
	readonly file: File;
}

/** Files out of a file field; of a folder with their paths in it. */
export function pickedFiles(files: Iterable<File>): GivenFile[] {
	return [...files].map((file) => ({ path: file.webkitRelativePath || file.name, file }));
}

/**
 * Files that were dropped, those in folders too. A browser tells what was dropped only in the
 * moment of the drop, so this is to be called there.
 */
export function droppedFiles(dropped: DataTransfer | null): Promise<GivenFile[]> {
	const items = [...(dropped?.items ?? [])].filter(({ kind }) => kind === "file");
	const found = items.map((item) => ({
		entry: item.webkitGetAsEntry?.() ?? undefined,
		file: item.getAsFile() ?? undefined,
	}));
	return Promise.all(
		found.map(({ entry, file }) => {
			if (entry?.isDirectory) return filesIn(entry as FileSystemDirectoryEntry);
			return Promise.resolve(file ? [{ path: file.name, file }] : []);
		}),
	).then((all) => all.flat());
}

async function filesIn(folder: FileSystemDirectoryEntry): Promise<GivenFile[]> {
	const reader = folder.createReader();
	const found: GivenFile[] = [];
	for (;;) {
		// A browser gives a hundred at a time, and none when it has given all.
		const entries = await new Promise<FileSystemEntry[]>((done, failed) =>
			reader.readEntries(done, failed),
		);
		if (entries.length === 0) return found;
		for (const entry of entries)
			if (entry.isDirectory) found.push(...(await filesIn(entry as FileSystemDirectoryEntry)));
			else found.push({ path: entry.fullPath.replace(/^\//, ""), file: await fileOf(entry) });
	}
}

function fileOf(entry: FileSystemEntry): Promise<File> {
	return new Promise((done, failed) => (entry as FileSystemFileEntry).file(done, failed));
}
