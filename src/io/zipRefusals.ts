import type { Problem } from "../core/problem.ts";
import { say } from "../core/say.ts";

/** Most entries a workbook's zip may hold. */
export const MOST_ENTRIES = 200;
/** Largest workbook, packed or unpacked: 64 MiB, some hundred thousand rows in every sheet. */
export const MOST_BYTES = 64 * 1024 * 1024;

/** Why a file was refused, in words. */
export type Words = Pick<Problem, "code" | "received" | "allowed" | "message">;

export const notZip = (file: string): Words => ({
	code: "not-a-zip",
	received: file,
	allowed: say`a zip of the workbook's CSV files`,
	message: say`${file} is not a zip file; nothing was read from it.`,
});

export const damaged = (file: string, what: string): Words => ({
	code: "damaged-zip",
	received: what,
	allowed: say`a whole zip file`,
	message: say`${file} is damaged: ${what}. Nothing was read from it; copy it again from where it came from.`,
});

export const otherForm = (file: string): Words => ({
	code: "other-zip",
	received: file,
	allowed: say`a zip in one part, of the ordinary form`,
	message: say`${file} is one part of several, or a zip of the form for very large files (ZIP64), which cannot be read here; nothing was read from it. Pack its files again into an ordinary zip.`,
});

export const tooMany = (file: string, entries: number): Words => ({
	code: "too-many-entries",
	received: String(entries),
	allowed: say`at most ${MOST_ENTRIES} files in a zip`,
	message: say`${file} holds ${entries} files, more than the ${MOST_ENTRIES} a workbook may have; nothing was read from it.`,
});

export const tooLarge = (file: string, size: number): Words => ({
	code: "too-large",
	received: say`${size} bytes`,
	allowed: say`at most ${MOST_BYTES} bytes`,
	message: say`${file} is or unpacks to ${Math.ceil(size / 1024 / 1024)} MB; a workbook has at most ${MOST_BYTES / 1024 / 1024} MB. Nothing was read from it.`,
});

export const badPath = (file: string, name: string): Words => ({
	code: "bad-path",
	received: name,
	allowed: say`plain names, or names in a folder, with / between`,
	message: say`${file} holds an entry "${name}" whose path leads elsewhere or cannot be trusted; nothing was read from it.`,
});

export const leftOutEntry = (file: string, name: string): Words => ({
	code: "left-out-entry",
	received: name,
	allowed: say`ordinary files with plain names`,
	message: say`${name} in ${file} is no ordinary file, or its name has letters that are not seen; it was left out, and the rest was read.`,
});

export const locked = (file: string, name: string): Words => ({
	code: "locked-zip",
	received: name,
	allowed: say`a zip without a password, packed in the ordinary way`,
	message: say`${file} has a password, or packs ${name} in a way that cannot be read; nothing was read from it.`,
});

export const doubledName = (file: string, name: string): Words => ({
	code: "doubled-file",
	received: name,
	allowed: say`each file once`,
	message: say`${file} holds ${name} twice, and nobody can tell which one counts; nothing was read from it.`,
});
