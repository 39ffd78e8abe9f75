import { expect, test } from "vitest";
import { glossary } from "../../src/core/glossary.ts";

test("every word of the glossary says what it means, and none is there twice", () => {
	expect(glossary.length).toBeGreaterThan(35);
	for (const { term, meaning } of glossary) expect(`${term}: ${meaning}`).toMatch(/^.+: \S.+\.$/);
	expect(new Set(glossary.map(({ term }) => term)).size).toBe(glossary.length);
});
