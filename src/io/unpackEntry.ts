import { Inflate, ZipPassThrough } from "fflate";
import type { ZipEntry } from "./zipDirectory.ts";

/** Fed piece by piece: one piece cannot swell to more than about 4 MB before the size is checked. */
const PIECE_BYTES = 4096;

/**
 * The contents of one entry, checked against its own size and checksum.
 *
 * @returns undefined where the contents are not what the zip's directory says: damaged, or swollen on purpose.
 */
export function unpackEntry(entry: ZipEntry): Uint8Array | undefined {
	const contents = entry.method === 0 ? entry.packed : inflate(entry);
	const sound = contents?.length === entry.originalSize && crcOf(contents) === entry.crc;
	return sound ? contents : undefined;
}

function inflate({ packed, originalSize }: ZipEntry): Uint8Array | undefined {
	const contents = new Uint8Array(originalSize);
	let length = 0;
	let finished = false;
	const stream = new Inflate((piece, final) => {
		if (length + piece.length <= originalSize) contents.set(piece, length);
		length += piece.length;
		finished = final;
	});
	try {
		for (let at = 0; at < packed.length && length <= originalSize; at += PIECE_BYTES)
			stream.push(packed.subarray(at, at + PIECE_BYTES), at + PIECE_BYTES >= packed.length);
	} catch {
		return undefined;
	}
	return finished && length === originalSize ? contents : undefined;
}

/** The checksum (CRC-32) of a zip entry, as the zip library works it out when writing. */
function crcOf(contents: Uint8Array): number {
	const writer = new ZipPassThrough("");
	writer.ondata = () => {};
	writer.push(contents, true);
	return writer.crc >>> 0;
}
