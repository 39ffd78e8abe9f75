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
 * Why the files of a command could not be written, in plain words.
 *
 * @throws the trouble itself, where it is not one of the file system's
 */
export function notWritten(out: string, trouble: unknown): string {
	const { code } = trouble as NodeJS.ErrnoException;
	if (code === undefined) throw trouble;
	const reason = REASONS[code] ?? String(trouble);
	return `Error: the files could not be written to ${out}: ${reason}. Whatever is there is whole.`;
}
