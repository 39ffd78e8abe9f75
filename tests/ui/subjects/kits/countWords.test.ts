import { expect, test } from "vitest";
import { countWords } from "../../../../src/ui/subjects/kits/kitRegisterPage.ts";

test("one kit is one", () => {
	expect(countWords(1, 1)).toBe("the one kit counts");
	expect(countWords(0, 1)).toBe("the one kit does not count");
	expect(countWords(1, 3)).toBe("1 of 3 kits counts");
	expect(countWords(3, 3)).toBe("all 3 kits count");
});
