import { advice, type Problem, problem } from "../core/problem.ts";
import { shown } from "../core/read/cellProblems.ts";
import { say } from "../core/say.ts";
import { unpackEntry } from "./unpackEntry.ts";
import { OtherForm, type ZipEntry, zipDirectory } from "./zipDirectory.ts";
import {
	badPath,
	damaged,
	doubledName,
	leftOutEntry,
	locked,
	MOST_BYTES,
	MOST_ENTRIES,
	notZip,
	otherForm,
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
 * Unpacks a zip, or refuses it whole with the reason where it cannot be trusted.
 *
 * Everything that can be told from the zip's directory is decided before
 * anything is unpacked; unpacking stops where an entry outgrows what it declares.
 * An entry that is no ordinary file, or whose name hides what it is, is left out with a
 * word. Backslashes between folders, which some programs write, are read as slashes.
 */
export function unzip(file: string, bytes: Uint8Array): Unzipped {
	const refused = (words: Words): Unzipped => ({
		files: [],
		problems: [problem({ file, line: null, column: "" }, words)],
	});
	if (bytes.length > MOST_BYTES) return refused(tooLarge(file, bytes.length));
	const entries = directoryOf(bytes);
	if (entries === "damaged")
		return refused(damaged(file, say`its list of contents does not fit what is in it`));
	if (entries === "other form") return refused(otherForm(file));
	if (entries === "not a zip") return refused(notZip(file));
	const reason = refusal(file, entries);
	if (reason) return refused(reason);
	const files: NamedBytes[] = [];
	const problems: Problem[] = [];
	for (const entry of entries) {
		if (isOdd(entry)) {
			problems.push(leftOut(file, entry.name));
			continue;
		}
		const contents = unpackEntry(entry);
		if (!contents)
			return refused(damaged(file, say`${shown(entry.name)} in it cannot be unpacked`));
		if (!entry.name.endsWith("/")) files.push({ name: entry.name, bytes: contents });
	}
	return { files, problems };
}

/** Whether a file begins as a zip does: with an entry, or with the end of an empty list. */
export function isZip([p, k, three, four]: Uint8Array): boolean {
	return p === 0x50 && k === 0x4b && ((three === 3 && four === 4) || (three === 5 && four === 6));
}

function directoryOf(bytes: Uint8Array): ZipEntry[] | "damaged" | "other form" | "not a zip" {
	try {
		const entries = zipDirectory(bytes)?.map((entry) => ({
			...entry,
			name: entry.name.replaceAll("\\", "/"),
		}));
		return entries ?? (isZip(bytes) ? "damaged" : "not a zip");
	} catch (error) {
		return error instanceof OtherForm ? "other form" : "damaged";
	}
}

function refusal(file: string, all: readonly ZipEntry[]) {
	if (all.length > MOST_ENTRIES) return tooMany(file, all.length);
	const tricky = all.find(leadsElsewhere);
	if (tricky) return badPath(file, shown(tricky.name));
	const strange = all.find(({ method, encrypted }) => encrypted || (method !== 0 && method !== 8));
	if (strange) return locked(file, shown(strange.name));
	const total = all.reduce((sum, { originalSize }) => sum + originalSize, 0);
	if (total > MOST_BYTES) return tooLarge(file, total);
	const doubled = all.find(({ name }, at) => all.findIndex((e) => e.name === name) !== at);
	return doubled ? doubledName(file, shown(doubled.name)) : undefined;
}

/** Letters that are not seen and turn the reading direction, so that a name looks like another. */
const TURNING = /[\u200e\u200f\u202a-\u202e\u2066-\u2069]/;

/** A path that could lead out of the folder it is unpacked into. */
function leadsElsewhere({ name }: ZipEntry): boolean {
	return /^$|^\/|^[a-z]:/iu.test(name) || name.split("/").includes("..");
}

/** A name that hides what it is, as a folder's icon has; a link; a folder with contents of its own. */
function isOdd({ name, special, originalSize }: ZipEntry): boolean {
	return (
		/\p{Cc}/u.test(name) ||
		TURNING.test(name) ||
		special ||
		(name.endsWith("/") && originalSize > 0)
	);
}

const INVISIBLE = /[\p{Cc}\p{Cf}]/gu;

/** An entry that was not taken: an error where a sheet may be lost with it. */
function leftOut(file: string, name: string): Problem {
	const seen = name.replace(INVISIBLE, "").replace(/\/$/, "");
	const mayBeSheet = /(csv|tsv|txt|vsc|xlsx|ods)/i.test(seen);
	const words = leftOutEntry(file, shown(seen));
	return (mayBeSheet ? problem : advice)({ file, line: null, column: "" }, words);
}
