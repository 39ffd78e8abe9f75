import { createReadStream } from "node:fs";
import { NotPlain } from "./notPlain.ts";
import { recordsEnd } from "./recordsEnd.ts";

/** Characters of a piece, and the most that a single record may have. */
const PIECE = 1 << 22;
const MOST = 1 << 26;

/**
 * The text of a long CSV file in UTF-8, piece by piece, each of whole records; of an empty file one empty piece.
 *
 * @param enough characters of a piece, at least
 * @throws NotPlain where it is not UTF-8, or a record has no end
 */
export async function* textPieces(path: string, enough = PIECE): AsyncGenerator<string> {
	const decoder = new TextDecoder("utf-8", { fatal: true });
	let rest = "";
	let isFirst = true;
	for await (const bytes of createReadStream(path)) {
		rest += decoded(decoder, bytes);
		if (rest.length < enough) continue;
		const end = recordsEnd(rest);
		if (end === 0 && rest.length > MOST) throw new NotPlain();
		if (end === 0) continue;
		yield rest.slice(0, end);
		isFirst = false;
		rest = rest.slice(end);
	}
	rest += decoded(decoder);
	if (rest !== "" || isFirst) yield rest;
}

function decoded(decoder: InstanceType<typeof TextDecoder>, bytes?: Uint8Array): string {
	try {
		return bytes ? decoder.decode(bytes, { stream: true }) : decoder.decode();
	} catch {
		throw new NotPlain();
	}
}
