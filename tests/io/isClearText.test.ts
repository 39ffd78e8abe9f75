import { expect, test } from "vitest";
import { isClearText } from "../../src/io/isClearText.ts";

test.each([
	["births,4.5\n", true],
	["births,0.125\n", true],
	["births,-0.125\n", true],
	["births,4.1230\n", true],
	["births,4.123\n", false],
	["births,12.500,\n", false],
	['births,"4,5"\n', false],
	["day,1/2/2027\n", false],
	["price,1 000\n", false],
	["price,5 %\n", false],
	["price,$5\n", false],
	["day,2027-03-01\n", true],
])("%j holds the clear form only: %s", (text, isClear) => {
	expect(isClearText(text)).toBe(isClear);
});
