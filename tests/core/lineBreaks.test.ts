import { expect, test } from "vitest";
import { lineBreaks } from "../../src/core/lineBreaks.ts";

// RFC 4180 ends lines with CR LF; files of one system only end them with LF, or of old with CR.
test.each([
	["no end", "one", 0],
	["nothing", "", 0],
	["LF", "one\ntwo\n", 2],
	["CR", "one\rtwo", 1],
	["CR LF, which is one end", "one\r\ntwo\r\n", 2],
	["all of them", "one\r\n\ntwo\r\rthree", 4],
])("line ends in a text with %s", (_what, text, ends) => {
	expect(lineBreaks(text)).toBe(ends);
});
