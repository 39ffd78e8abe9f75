import { expect, test } from "vitest";
import { axisPx, LETTER_PX } from "../../../src/ui/format/letterPx.ts";

test("an axis has room for the longest of its numbers, spaces and all", () => {
	expect(axisPx(9)).toBe(12 + LETTER_PX);
	expect(axisPx(9.5)).toBe(12 + 2 * LETTER_PX);
	expect(axisPx(12_000)).toBe(12 + "12 000".length * LETTER_PX);
});
