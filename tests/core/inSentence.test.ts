import { expect, test } from "vitest";
import { inSentence } from "../../src/core/inSentence.ts";

test.each([
	["Pack size", "pack size"],
	["Épaisseur", "épaisseur"],
	["litres of A", "litres of A"],
	["", ""],
])("%s within a sentence is %s", (label, within) => {
	expect(inSentence(label)).toBe(within);
});
