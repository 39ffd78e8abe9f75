import { expect, test } from "vitest";
import { decimalSignOf } from "../../src/core/language.ts";

test.each([
	["en", "."],
	["fr", ","],
	["pt", ","],
	["ar-EG", "."],
])(
	"in %s whole and part of a number are parted by %s, in digits that files have too",
	(code, sign) => {
		expect(decimalSignOf(code)).toBe(sign);
	},
);
