import { writeFiles } from "../io/writeFiles.ts";

const REASONS: Readonly<Record<string, string>> = {
	ENOSPC: "the disk is full",
	EDQUOT: "there is no more room for this user on the disk",
	EACCES: "this user may not write there",
	EPERM: "this user may not write there, or another program has a file open",
	EBUSY: "another program has a file open",
	EROFS: "the disk can only be read",
	ENOTDIR: "a file stands where a folder is needed",
	EEXIST: "a file stands where a folder is needed",
	EISDIR: "a folder stands where a file is needed",
	ENAMETOOLONG: "the name is too long",
	EFBIG: "the file is larger than the disk allows",
	EIO: "the disk does not work",
};

/**
 * Writes the files of a command, each whole or not at all.
 *
 * @param error where it is said why they could not be written
 * @returns whether they are written
 */
export async function writtenTo(
	out: string,
	files: Readonly<Record<string, string | Uint8Array>>,
	error: Console["error"],
): Promise<boolean> {
	try {
		await writeFiles(out, files);
		return true;
	} catch (trouble) {
		const { code } = trouble as NodeJS.ErrnoException;
		if (code === undefined) throw trouble;
		const reason = REASONS[code] ?? String(trouble);
		error(
			`Error: the files could not be written to ${out}: ${reason}. Whatever is there is whole.`,
		);
		return false;
	}
}
