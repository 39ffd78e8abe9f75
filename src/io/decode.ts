import { type Problem, problem } from "../core/problem.ts";
import { say } from "../core/say.ts";

type Decoded =
	| { readonly ok: true; readonly text: string }
	| { readonly ok: false; readonly problem: Problem };

/**
 * The text of a UTF-8 file, or the problem with it.
 *
 * Another encoding is never guessed: a wrong guess turns names and signs such
 * as "°" into others without anybody noticing.
 */
export function decode(file: string, bytes: Uint8Array): Decoded {
	if (isTwoByte(bytes)) return { ok: false, problem: notUtf8(file, bytes) };
	try {
		return { ok: true, text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
	} catch {
		return { ok: false, problem: notUtf8(file, bytes) };
	}
}

function notUtf8(file: string, bytes: Uint8Array): Problem {
	const twoByte = isTwoByte(bytes);
	const good = goodStart(bytes);
	const line = twoByte ? 1 : good.split(/\r\n?|\n/).length;
	return problem(
		{ file, line, column: "" },
		{
			code: "not-utf-8",
			received: twoByte ? say`UTF-16 text` : `${good.slice(-20)}\ufffd`,
			allowed: say`text in the encoding UTF-8`,
			message: twoByte
				? say`${file} line ${line}: the file is in the encoding UTF-16. Save the file again as CSV in the encoding UTF-8; nothing was read from it.`
				: say`${file} line ${line}: there is a letter that is not UTF-8. Save the file again as CSV in the encoding UTF-8; nothing was read from it.`,
		},
	);
}

/** So many bytes tell whether every other one is 0. */
const TELLING_BYTES = 8;

/** UTF-16: it says so with its first two bytes, or every other byte of its plain letters is 0. */
function isTwoByte(bytes: Uint8Array): boolean {
	const [a, b] = bytes;
	if ((a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff)) return true;
	const from = isMarked(bytes) ? 3 : 0;
	const zeros = Array.from(bytes.subarray(from, from + TELLING_BYTES), (byte) => byte === 0);
	const alternate = (first: boolean) =>
		zeros.every((zero, at) => zero === ((at % 2 === 0) === first));
	return zeros.length === TELLING_BYTES && (alternate(true) || alternate(false));
}

/** A UTF-8 mark in front is no part of the text, and a saved file does not have it any more. */
function isMarked([a, b, c]: Uint8Array): boolean {
	return a === 0xef && b === 0xbb && c === 0xbf;
}

/** The text before the first byte that is not UTF-8; the sign \ufffd may well stand in it. */
function goodStart(bytes: Uint8Array): string {
	const again = new TextEncoder().encode(
		new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes),
	);
	const end = bytes.findIndex((byte, at) => byte !== again[at]);
	return new TextDecoder().decode(bytes.subarray(0, end));
}
