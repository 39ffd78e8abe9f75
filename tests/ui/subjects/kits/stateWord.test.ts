import { expect, test } from "vitest";
import { stateWord } from "../../../../src/ui/subjects/kits/stateWord.ts";

test.each([
	["ready", "ready"],
	["in_repair", "in repair"],
	["cannot be read", "cannot be read"],
	["", "not known"],
])("a kit that stands as %j is told %s", (state, words) => {
	expect(stateWord(state)).toBe(words);
});
