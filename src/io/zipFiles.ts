import { zipSync } from "fflate";

/** The earliest date a zip can hold; a fixed one makes equal files equal zips. */
const NO_DATE = new Date(1980, 0, 1);

/** Files as one zip, by their paths in it, in the order of the alphabet. The same files give the same bytes. */
export function zipFiles(files: Readonly<Record<string, Uint8Array>>): Uint8Array {
	const entries = Object.entries(files).sort(([one], [other]) => (one < other ? -1 : 1));
	return zipSync(Object.fromEntries(entries), { mtime: NO_DATE });
}
