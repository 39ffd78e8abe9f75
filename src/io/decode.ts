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
	try {
		return { ok: true, text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
	} catch {
		return { ok: false, problem: notUtf8(file, bytes) };
	}
}

function notUtf8(file: string, bytes: Uint8Array): Problem {
	const twoByte =
		(bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
	const [good = ""] = new TextDecoder("utf-8").decode(bytes).split("\ufffd", 1);
	const line = twoByte ? 1 : good.split(/\r\n?|\n/).length;
	return problem(
		{ file, line, column: "" },
		{
			code: "not-utf-8",
			received: twoByte ? say`UTF-16 text` : `${good.slice(-20)}\ufffd`,
			allowed: say`text in the encoding UTF-8`,
			message: say`${file} line ${line}: ${twoByte ? say`the file is in the encoding UTF-16` : say`there is a letter that is not UTF-8`}. Save the file again as CSV in the encoding UTF-8; nothing was read from it.`,
		},
	);
}
