/** What a zip says of one of its entries, and where its packed bytes are. */
export interface ZipEntry {
	readonly name: string;
	/** 0: stored, 8: deflated. */
	readonly method: number;
	readonly encrypted: boolean;
	readonly crc: number;
	readonly originalSize: number;
	readonly packed: Uint8Array;
}

const END_SIGNATURE = 0x06054b50;
const ENTRY_SIGNATURE = 0x02014b50;
const LOCAL_SIGNATURE = 0x04034b50;
const END_BYTES = 22;
const LONGEST_COMMENT = 65_535;
const UTF8_NAME = 0x800;

/**
 * Reads the directory at the end of a zip (PKWARE APPNOTE 4.3.12, 4.3.16) without unpacking anything.
 *
 * The unpacking library keeps checksums and places to itself, and both are needed
 * to refuse a damaged or swollen file before its contents are used.
 *
 * @returns undefined where there is no directory at all: not a zip.
 * @throws RangeError where the directory points outside the file: damaged.
 */
export function zipDirectory(bytes: Uint8Array): ZipEntry[] | undefined {
	const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	const end = findEnd(view);
	if (end === undefined) return undefined;
	const entries: ZipEntry[] = [];
	let at = view.getUint32(end + 16, true);
	for (let left = view.getUint16(end + 10, true); left > 0; left--) {
		const nameLength = view.getUint16(at + 28, true);
		entries.push(entryAt(view, bytes, at, nameLength));
		at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
	}
	return entries;
}

function findEnd(view: DataView): number | undefined {
	const last = view.byteLength - END_BYTES;
	for (let at = last; at >= 0 && at >= last - LONGEST_COMMENT; at--)
		if (view.getUint32(at, true) === END_SIGNATURE) return at;
	return undefined;
}

function entryAt(view: DataView, bytes: Uint8Array, at: number, nameLength: number): ZipEntry {
	expectSignature(view, at, ENTRY_SIGNATURE);
	const flags = view.getUint16(at + 8, true);
	const packedSize = view.getUint32(at + 20, true);
	const local = view.getUint32(at + 42, true);
	expectSignature(view, local, LOCAL_SIGNATURE);
	const start = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
	if (start + packedSize > bytes.length) throw new RangeError("an entry ends after the file");
	const name = bytes.subarray(at + 46, at + 46 + nameLength);
	return {
		name: new TextDecoder(flags & UTF8_NAME ? "utf-8" : "windows-1252").decode(name),
		method: view.getUint16(at + 10, true),
		encrypted: (flags & 1) === 1,
		crc: view.getUint32(at + 16, true),
		originalSize: view.getUint32(at + 24, true),
		packed: bytes.subarray(start, start + packedSize),
	};
}

function expectSignature(view: DataView, at: number, signature: number): void {
	if (view.getUint32(at, true) !== signature) throw new RangeError(`no entry at byte ${at}`);
}
