/** What a zip says of one of its entries, and where its packed bytes are. */
export interface ZipEntry {
	readonly name: string;
	/** 0: stored, 8: deflated. */
	readonly method: number;
	readonly encrypted: boolean;
	/** Neither a file nor a folder: a link to another place, a device. */
	readonly special: boolean;
	readonly crc: number;
	readonly originalSize: number;
	readonly packed: Uint8Array;
}

/** A zip in several parts, or in the form for more than 4 GB (ZIP64). */
export class OtherForm extends Error {}

const END_SIGNATURE = 0x06054b50;
const ENTRY_SIGNATURE = 0x02014b50;
const LOCAL_SIGNATURE = 0x04034b50;
const END_BYTES = 22;
const LONGEST_COMMENT = 65_535;
/** Stands before the end in ZIP64. */
const LOCATOR_64 = 0x07064b50;
const LOCATOR_BYTES = 20;
const UTF8_NAME = 0x800;
const ENCRYPTED = 1;
const SIZES_BEHIND = 8;
/** Stand in the place of a number that is told elsewhere, in ZIP64. */
const ELSEWHERE_2 = 0xffff;
const ELSEWHERE_4 = 0xffffffff;
/** What the upper half of the attributes says of the kind of an entry: nothing, a folder, a file. */
const ORDINARY_KINDS = [0, 4, 8];

/**
 * Reads the directory at the end of a zip (PKWARE APPNOTE 4.3.12, 4.3.16) without unpacking anything.
 *
 * The unpacking library keeps checksums and places to itself, and both are needed
 * to refuse a damaged or swollen file before its contents are used. Whatever one
 * program could read in one way and another in another way counts as damaged:
 * entries that overlap, heads that say something else than the directory, bytes
 * behind the end, entries beside the directory.
 *
 * @returns undefined where there is no directory at all: not a zip.
 * @throws RangeError where the directory does not fit the file: damaged.
 * @throws OtherForm where the zip is whole and of a form that is not read here.
 */
export function zipDirectory(bytes: Uint8Array): ZipEntry[] | undefined {
	const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	const end = findEnd(view);
	if (end === undefined) return undefined;
	const count = view.getUint16(end + 10, true);
	const start = view.getUint32(end + 16, true);
	const isZip64 = end >= LOCATOR_BYTES && view.getUint32(end - LOCATOR_BYTES, true) === LOCATOR_64;
	const isPart = view.getUint32(end + 4, true) !== 0;
	if (isZip64 || isPart || count === ELSEWHERE_2 || start === ELSEWHERE_4) throw new OtherForm();
	expect(view.getUint16(end + 8, true) === count, "entries elsewhere");
	const found: Placed[] = [];
	let at = start;
	for (let left = count; left > 0; left--) {
		const nameLength = view.getUint16(at + 28, true);
		found.push(entryAt(view, bytes, at, nameLength));
		at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
	}
	expect(
		at === end && at - start === view.getUint32(end + 12, true),
		"more than the directory says",
	);
	const inOrder = [...found].sort((one, other) => one.from - other.from);
	expect(
		inOrder.every(({ to }, i) => to <= (inOrder[i + 1]?.from ?? start)),
		"entries overlap",
	);
	return found.map(({ entry }) => entry);
}

/** An entry, and the bytes of the file that it takes up. */
interface Placed {
	readonly entry: ZipEntry;
	readonly from: number;
	readonly to: number;
}

/** Where the end of the directory is: its comment ends with the file. A zip in a zip may have an end of its own before. */
function findEnd(view: DataView): number | undefined {
	const last = view.byteLength - END_BYTES;
	const marked: number[] = [];
	for (let at = last; at >= 0 && at >= last - LONGEST_COMMENT; at--)
		if (view.getUint32(at, true) === END_SIGNATURE) marked.push(at);
	if (marked.length === 0) return undefined;
	const ends = marked.filter((at) => at + view.getUint16(at + 20, true) === last);
	expect(ends.length === 1, "no end, or two");
	return ends[0];
}

function entryAt(view: DataView, bytes: Uint8Array, at: number, nameLength: number): Placed {
	expect(view.getUint32(at, true) === ENTRY_SIGNATURE, "no entry");
	const flags = view.getUint16(at + 8, true);
	const method = view.getUint16(at + 10, true);
	const [crc = 0, packedSize = 0, originalSize = 0] = sizesAt(view, at + 16);
	const from = view.getUint32(at + 42, true);
	if ([packedSize, originalSize, from].includes(ELSEWHERE_4)) throw new OtherForm();
	expect(view.getUint32(from, true) === LOCAL_SIGNATURE, "no contents");
	const start = from + 30 + view.getUint16(from + 26, true) + view.getUint16(from + 28, true);
	const to = start + packedSize;
	const name = bytes.subarray(at + 46, at + 46 + nameLength);
	const localName = bytes.subarray(from + 30, from + 30 + view.getUint16(from + 26, true));
	const sizes = [crc, packedSize, originalSize];
	const saysElsewhere = (view.getUint16(from + 6, true) & SIZES_BEHIND) !== 0;
	const agrees = (said: number, at: number) => said === sizes[at] || said === ELSEWHERE_4;
	expect(
		to <= bytes.length &&
			same(localName, name) &&
			view.getUint16(from + 8, true) === method &&
			(saysElsewhere || sizesAt(view, from + 14).every(agrees)),
		"head and directory differ",
	);
	const entry = {
		name: new TextDecoder(flags & UTF8_NAME ? "utf-8" : "windows-1252").decode(name),
		method,
		encrypted: (flags & ENCRYPTED) !== 0,
		special: !ORDINARY_KINDS.includes(view.getUint32(at + 38, true) >>> 28),
		crc,
		originalSize,
		packed: bytes.subarray(start, to),
	};
	return { entry, from, to };
}

/** Checksum, packed and original size, as they stand one after the other. */
function sizesAt(view: DataView, at: number): number[] {
	return [0, 4, 8].map((offset) => view.getUint32(at + offset, true));
}

function same(one: ArrayLike<number>, other: ArrayLike<number>): boolean {
	return one.length === other.length && Array.from(one).every((byte, i) => byte === other[i]);
}

function expect(isSo: boolean, otherwise: string): asserts isSo {
	if (!isSo) throw new RangeError(otherwise);
}
