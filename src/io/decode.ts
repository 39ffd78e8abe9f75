import { advice, type Problem, problem } from "../core/problem.ts";
import { shown } from "../core/read/cellProblems.ts";
import { say } from "../core/say.ts";

type Decoded =
	| { readonly ok: true; readonly text: string; readonly advice?: Problem }
	| { readonly ok: false; readonly problem: Problem };

/**
 * The text of a file, or the problem with it.
 *
 * UTF-8 and UTF-16 are told from the bytes. What is neither is read as Windows-1252, which
 * programs of many countries save in, and said with an example: whether "Café" came out
 * right only a person can tell. Bytes that are no text in any of them are refused.
 *
 * @param encoding what the person says it is, by a name of the Encoding Standard
 */
export function decode(file: string, bytes: Uint8Array, encoding?: string): Decoded {
	if (encoding !== undefined) return textIn(file, bytes, encoding);
	// A UTF-8 mark in front is no part of the text, and some programs put it before UTF-16 too.
	const unmarked = isMarked(bytes) ? bytes.subarray(3) : bytes;
	const wide = wideEncodingOf(unmarked);
	if (wide !== undefined) return textIn(file, unmarked, wide);
	try {
		const text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
		// Too short to be sure; saved, and so longer, it would be taken for UTF-16.
		if (wideByZeros(unmarked)) return { ok: false, problem: noText(file, "") };
		return { ok: true, text };
	} catch {
		const read = textIn(file, bytes, "windows-1252");
		return read.ok ? { ...read, advice: asWindows(file, bytes, read.text) } : read;
	}
}

/** Letters that no text has: bytes of another kind of file. */
const NO_TEXT = /(?!\s)\p{Cc}/u;

function textIn(file: string, bytes: Uint8Array, encoding: string): Decoded {
	try {
		const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
		const at = encoding === "utf-8" ? -1 : text.search(NO_TEXT);
		return at < 0 ? { ok: true, text } : { ok: false, problem: noText(file, text.slice(0, at)) };
	} catch {
		return { ok: false, problem: noText(file, "") };
	}
}

function noText(file: string, before: string): Problem {
	const line = before.split(/\r\n?|\n/).length;
	return problem(
		{ file, line, column: "" },
		{
			code: "not-text",
			received: `${before.slice(-20)}\ufffd`,
			allowed: say`text in the encoding UTF-8`,
			message: say`${file} line ${line}: this is not text that can be read. Save the file again as CSV in the encoding UTF-8; nothing was read from it.`,
		},
	);
}

/** A word with a letter beyond plain English, by which a person sees whether the guess was right. */
const TELLING_WORD = /[^\s,;"]*[^\0-\x7f][^\s,;"]*/;

function asWindows(file: string, bytes: Uint8Array, text: string): Problem {
	const line = goodStart(bytes).split(/\r\n?|\n/).length;
	const example = shown(TELLING_WORD.exec(text)?.[0] ?? "");
	return advice(
		{ file, line, column: "" },
		{
			code: "read-as-windows-1252",
			received: example,
			allowed: say`text in the encoding UTF-8`,
			message: say`${file} is not in the encoding UTF-8; it was read as Windows-1252, and a word in line ${line} came out as “${example}”. If that is wrong, save the file again in UTF-8.`,
		},
	);
}

/** So many bytes tell whether every other one is 0. */
const TELLING_BYTES = 8;

/** UTF-16 says so with its first two bytes, or every other byte of its plain letters is 0. */
function wideEncodingOf(bytes: Uint8Array): "utf-16le" | "utf-16be" | undefined {
	const [a, b] = bytes;
	if (a === 0xff && b === 0xfe) return "utf-16le";
	if (a === 0xfe && b === 0xff) return "utf-16be";
	return bytes.length < TELLING_BYTES ? undefined : wideByZeros(bytes);
}

function wideByZeros(bytes: Uint8Array): "utf-16le" | "utf-16be" | undefined {
	const zeros = Array.from(bytes.subarray(0, TELLING_BYTES), (byte) => byte === 0);
	if (zeros.length < 2) return undefined;
	if (zeros.every((zero, at) => zero === (at % 2 === 1))) return "utf-16le";
	if (zeros.every((zero, at) => zero === (at % 2 === 0))) return "utf-16be";
	return undefined;
}

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
