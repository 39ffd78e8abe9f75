import { crc32, deflateRawSync } from "node:zlib";

/** One entry of a zip written by hand, right in all that is not said. */
export interface Entry {
	readonly name: string | Uint8Array;
	readonly contents?: Uint8Array;
	/** 0: stored, 8: deflated. */
	readonly method?: number;
	readonly flags?: number;
	/** Upper half: what kind of file it is where the zip was made on Unix. */
	readonly attributes?: number;
	readonly madeOn?: number;
	/** What the directory says, where it lies. */
	readonly says?: Partial<Record<"crc" | "size" | "packedSize" | "at", number>>;
	/** What the head of the entry itself says, where it differs. */
	readonly localName?: string;
	/** Packed bytes in the place of the right ones. */
	readonly packed?: Uint8Array;
	readonly extra?: Uint8Array;
	/** A descriptor behind the contents, and nothing of sizes before them. */
	readonly descriptor?: boolean;
	/** The head leaves the sizes to a further field, as programs do that pack what they cannot measure. */
	readonly sizesElsewhere?: boolean;
}

interface End {
	readonly comment?: Uint8Array;
	readonly before?: Uint8Array;
	readonly after?: Uint8Array;
	/** Bytes between the entries and the directory, or the directory and its end. */
	readonly gap?: Uint8Array;
	readonly beforeEnd?: Uint8Array;
	readonly says?: Partial<Record<"entries" | "entriesHere" | "size" | "at" | "disk", number>>;
}

const UTF8_NAME = 0x800;
const DESCRIPTOR = 8;

/** A zip as the standard has it (PKWARE APPNOTE), or off it in the ways asked for. */
export function zipOf(entries: readonly Entry[], end: End = {}): Uint8Array {
	const parts: Uint8Array[] = [end.before ?? new Uint8Array()];
	const directory: Uint8Array[] = [];
	let at = parts[0]?.length ?? 0;
	for (const entry of entries) {
		const { contents = new Uint8Array(), method = 8, extra = new Uint8Array(), descriptor } = entry;
		const name = typeof entry.name === "string" ? new TextEncoder().encode(entry.name) : entry.name;
		const localName =
			entry.localName === undefined ? name : new TextEncoder().encode(entry.localName);
		const packed =
			entry.packed ?? (method === 8 ? new Uint8Array(deflateRawSync(contents)) : contents);
		const flags = (entry.flags ?? UTF8_NAME) | (descriptor ? DESCRIPTOR : 0);
		const crc = entry.says?.crc ?? crc32(contents);
		const size = entry.says?.size ?? contents.length;
		const packedSize = entry.says?.packedSize ?? packed.length;
		const known = descriptor
			? [0, 0, 0]
			: entry.sizesElsewhere
				? [crc, 0xffffffff, 0xffffffff]
				: [crc, packedSize, size];
		const head = numbers(
			[4, 0x04034b50],
			[2, 20],
			[2, flags],
			[2, method],
			[2, 0],
			[2, 33],
			...known.map((n): [number, number] => [4, n]),
			[2, localName.length],
			[2, extra.length],
		);
		const tail = descriptor
			? numbers([4, 0x08074b50], [4, crc], [4, packedSize], [4, size])
			: new Uint8Array();
		parts.push(head, localName, extra, packed, tail);
		directory.push(
			numbers(
				[4, 0x02014b50],
				[2, ((entry.madeOn ?? 0) << 8) | 20],
				[2, 20],
				[2, flags],
				[2, method],
				[2, 0],
				[2, 33],
				[4, crc],
				[4, packedSize],
				[4, size],
				[2, name.length],
				[2, extra.length],
				[2, 0],
				[2, 0],
				[2, 0],
				[4, entry.attributes ?? 0],
				[4, entry.says?.at ?? at],
			),
			name,
			extra,
		);
		at += head.length + localName.length + extra.length + packed.length + tail.length;
	}
	const gap = end.gap ?? new Uint8Array();
	const size = directory.reduce((sum, piece) => sum + piece.length, 0);
	const comment = end.comment ?? new Uint8Array();
	const says = end.says ?? {};
	parts.push(gap, ...directory, end.beforeEnd ?? new Uint8Array());
	parts.push(
		numbers(
			[4, 0x06054b50],
			[2, says.disk ?? 0],
			[2, says.disk ?? 0],
			[2, says.entriesHere ?? says.entries ?? entries.length],
			[2, says.entries ?? entries.length],
			[4, says.size ?? size],
			[4, says.at ?? at + gap.length],
			[2, comment.length],
		),
		comment,
		end.after ?? new Uint8Array(),
	);
	return new Uint8Array(Buffer.concat(parts));
}

/** Numbers as a zip has them: size in bytes and value, the lowest byte first. */
function numbers(...all: [size: number, value: number][]): Uint8Array {
	return Uint8Array.from(
		all.flatMap(([size, value]) =>
			Array.from({ length: size }, (_, i) => Math.floor(value / 256 ** i) & 0xff),
		),
	);
}
