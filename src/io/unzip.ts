import { type Problem, problem } from "../core/problem.ts";
import { say } from "../core/say.ts";
import { unpackEntry } from "./unpackEntry.ts";
import { type ZipEntry, zipDirectory } from "./zipDirectory.ts";
import {
	badPath,
	damaged,
	doubledName,
	locked,
	MOST_BYTES,
	MOST_ENTRIES,
	notZip,
	tooLarge,
	tooMany,
	type Words,
} from "./zipRefusals.ts";

/** A file by name, with its bytes. */
export interface NamedBytes {
	readonly name: string;
	readonly bytes: Uint8Array;
}

interface Unzipped {
	readonly files: readonly NamedBytes[];
	readonly problems: readonly Problem[];
}

/**
 * Unpacks a zip whole, or refuses it whole with the reason.
 *
 * Everything that can be told from the zip's directory is decided before
 * anything is unpacked; unpacking stops where an entry outgrows what it declares.
 */
export function unzip(file: string, bytes: Uint8Array): Unzipped {
	const refused = (words: Words): Unzipped => ({
		files: [],
		problems: [problem({ file, line: null, column: "" }, words)],
	});
	if (bytes.length > MOST_BYTES) return refused(tooLarge(file, bytes.length));
	const entries = directoryOf(bytes);
	if (entries === undefined)
		return refused(damaged(file, say`its list of contents cannot be read`));
	if (entries === "not a zip") return refused(notZip(file));
	const wanted = entries.filter(({ name }) => !name.endsWith("/"));
	const reason = refusal(file, entries, wanted);
	if (reason) return refused(reason);
	const files: NamedBytes[] = [];
	for (const entry of wanted) {
		const contents = unpackEntry(entry);
		if (!contents) return refused(damaged(file, say`${entry.name} in it cannot be unpacked`));
		files.push({ name: entry.name, bytes: contents });
	}
	return { files, problems: [] };
}

/** Whether a file begins as a zip does: with an entry, or with the end of an empty list. */
export function isZip([p, k, three, four]: Uint8Array): boolean {
	return p === 0x50 && k === 0x4b && ((three === 3 && four === 4) || (three === 5 && four === 6));
}

function directoryOf(bytes: Uint8Array): ZipEntry[] | "not a zip" | undefined {
	try {
		return zipDirectory(bytes) ?? (isZip(bytes) ? undefined : "not a zip");
	} catch {
		return undefined;
	}
}

function refusal(file: string, all: readonly ZipEntry[], wanted: readonly ZipEntry[]) {
	if (all.length > MOST_ENTRIES) return tooMany(file, all.length);
	const tricky = all.find(({ name }) => isTricky(name));
	if (tricky) return badPath(file, tricky.name);
	const strange = wanted.find(
		({ method, encrypted }) => encrypted || (method !== 0 && method !== 8),
	);
	if (strange) return locked(file, strange.name);
	const total = wanted.reduce((sum, { originalSize }) => sum + originalSize, 0);
	if (total > MOST_BYTES) return tooLarge(file, total);
	const doubled = wanted.find(({ name }, at) => wanted.findIndex((e) => e.name === name) !== at);
	return doubled ? doubledName(file, doubled.name) : undefined;
}

/** A path that could lead out of the folder it is unpacked into, or that hides what it is. */
function isTricky(name: string): boolean {
	return /^$|^\/|^[a-z]:|\\|\p{Cc}/iu.test(name) || name.split("/").includes("..");
}
